import { Unreadable } from './unreadable';

/** What templates are read from; all other entities, tables and blocks say nothing about a cut. */
const ENTITIES = new Set(['LINE', 'LWPOLYLINE', 'POLYLINE', 'VERTEX', 'SEQEND', 'CIRCLE', 'TEXT', 'MTEXT']);
/** Group code of how many corners a line has. */
const CORNERS = 90;
/** Group codes of a light polyline's corners: place, widths, bulge. */
const OF_A_CORNER = new Set([10, 20, 30, 40, 41, 42]);

interface Group {
  code: number;
  value: string;
  /** line of the file that the value stands in, from 1 */
  line: number;
}

/**
 * The header of a DXF text and those of its entities that templates are read from; a light polyline's corners after all
 * else that is said of it. On a torn file the parser may otherwise go round for ever: in a table of layers with an end
 * that is none, at what stands among corners, and as often as a line says that it has corners.
 * @throws {Unreadable} where the file breaks off, or gives a line more corners than it can hold
 */
export function neededGroups(text: string): string {
  const groups = groupsOf(text);
  const kept: Group[] = [];
  let section: string | null = null;
  for (let k = 0; k < groups.length; ) {
    const first = groups[k]!;
    const begin = k++;
    while (k < groups.length && groups[k]!.code !== 0) k++;
    const entity = groups.slice(begin, k);
    if (first.value === 'SECTION' && first.code === 0) section = entity.find(({ code }) => code === 2)?.value ?? null;
    const isBound = first.code !== 0 || first.value === 'SECTION' || first.value === 'ENDSEC';
    if (section === 'HEADER' || (section === 'ENTITIES' && isBound)) kept.push(...entity);
    else if (section === 'ENTITIES' && ENTITIES.has(first.value)) kept.push(...tidied(entity, groups.length));
    if (first.value === 'ENDSEC') section = null;
  }
  return [...kept.flatMap(({ code, value }) => [code, value]), 0, 'EOF', ''].join('\n');
}

/** Code and value of each group up to the end of the file. */
function groupsOf(text: string): Group[] {
  const lines = text.split(/\r\n|\r|\n/);
  const groups: Group[] = [];
  for (let k = 0; k + 1 < lines.length; k += 2) {
    const group = { code: Number.parseInt(lines[k]!, 10), value: lines[k + 1]!.trim(), line: k + 2 };
    if (group.code === 0 && group.value === 'EOF') return groups;
    groups.push(group);
  }
  throw new Unreadable('the file is no DXF that can be read (it breaks off before its end)');
}

function tidied(entity: readonly Group[], most: number): readonly Group[] {
  const endless = entity.find(({ code, value }) => code === CORNERS && Number(value) > most);
  if (endless) {
    const { line, value } = endless;
    throw new Unreadable(`line ${line} of the file gives a line ${value} corners, more than the file can hold`);
  }
  if (entity[0]!.value !== 'LWPOLYLINE') return entity;
  const isOfCorner = ({ code }: Group): boolean => OF_A_CORNER.has(code);
  return [...entity.filter((group) => !isOfCorner(group)), ...entity.filter(isOfCorner)];
}

import { Unreadable } from './unreadable';

/** What templates are read from; all other entities, tables and blocks say nothing about a cut. */
const ENTITIES = new Set(['LINE', 'LWPOLYLINE', 'POLYLINE', 'VERTEX', 'SEQEND', 'CIRCLE', 'TEXT', 'MTEXT']);
/** Group code of how many corners a line has. */
const CORNERS = 90;

/**
 * The header of a DXF text and those of its entities that templates are read from. On the rest, where it is torn, the
 * parser may go round for ever: in a table of layers with an end that is none, and as often as a line says that it has
 * corners.
 * @throws {Unreadable} where the file breaks off, or says that a line has more corners than the file can hold
 */
export function neededGroups(text: string): string {
  const lines = text.split(/\r\n|\r|\n/);
  const kept: string[] = [];
  let section: string | null = null;
  let keeps = true;
  for (let k = 0; k + 1 < lines.length; k += 2) {
    const code = Number.parseInt(lines[k]!, 10);
    const value = lines[k + 1]!.trim();
    if (code === 0) {
      if (value === 'EOF') return [...kept, '0', 'EOF', ''].join('\n');
      if (value === 'SECTION') section = lines[k + 3]?.trim() ?? null;
      const within = section === 'ENTITIES' && value !== 'SECTION' && value !== 'ENDSEC';
      keeps = section === 'HEADER' || (section === 'ENTITIES' && (!within || ENTITIES.has(value)));
      if (value === 'ENDSEC') section = null;
    }
    if (code === CORNERS && keeps && Number(value) > lines.length) {
      throw new Unreadable(`line ${k + 2} of the file gives a line ${value} corners, more than the file can hold`);
    }
    if (keeps) kept.push(lines[k]!, lines[k + 1]!);
  }
  throw new Unreadable('the file is no DXF that can be read (it breaks off before its end)');
}

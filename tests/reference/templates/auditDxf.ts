/**
 * An audit of a DXF file after the format publisher's 2024 reference: value types by group code ("Group Code Value
 * Types"), sections and their order, the groups that LINE, LWPOLYLINE, CIRCLE and TEXT must have; the ranges of group codes
 * and the rules for handles from memory. Written without the model's code.
 */
export function auditDxf(text: string): string[] {
  const faults: string[] = [];
  const lines = text.replace(/\r?\n$/, '').split(/\r?\n/);
  if (lines.length % 2 !== 0) faults.push('an odd number of lines');
  const groups: Group[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = Number(lines[i]!.trim());
    if (!/^\s*\d+\s*$/.test(lines[i]!)) faults.push(`line ${i + 1}: "${lines[i]}" is no group code`);
    groups.push({ code, value: lines[i + 1]!, line: i + 2 });
  }
  for (const { code, value, line } of groups) {
    const trimmed = value.trim();
    if (isReal(code) && !(trimmed !== '' && Number.isFinite(Number(trimmed)))) faults.push(`line ${line}: no real`);
    if (isInteger(code) && !/^-?\d+$/.test(trimmed)) faults.push(`line ${line}: no integer`);
    if (isHandle(code) && !/^[0-9A-F]{1,16}$/i.test(trimmed)) faults.push(`line ${line}: no handle`);
  }
  const sections = sectionsOf(groups, faults);
  const order = ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'];
  const places = [...sections.keys()].map((name) => order.indexOf(name));
  if (places.some((place, i) => place < 0 || (i > 0 && place <= places[i - 1]!))) faults.push('sections out of order');
  for (const needed of ['HEADER', 'TABLES', 'ENTITIES']) if (!sections.has(needed)) faults.push(`no section ${needed}`);

  const tables = recordsOf(sections.get('TABLES') ?? []);
  const named = (kind: string) =>
    new Set(tables.filter(([first]) => first!.value === kind).map((record) => first(record, 2)));
  const [layers, lineTypes] = [named('LAYER'), named('LTYPE')];
  const entities = recordsOf(sections.get('ENTITIES') ?? []);
  for (const entity of entities) {
    const [{ value: kind, line }] = entity as [Group];
    const where = `${kind} at line ${line}`;
    const layer = first(entity, 8);
    if (layer === undefined || !layers.has(layer)) faults.push(`${where}: layer ${layer} is not in the table`);
    const lineType = first(entity, 6);
    if (lineType !== undefined && !lineTypes.has(lineType) && !/^by/i.test(lineType))
      faults.push(`${where}: line type`);
    if (!entity.some(({ code, value }) => code === 100 && value === 'AcDbEntity')) faults.push(`${where}: no subclass`);
    for (const code of needs[kind] ?? []) {
      if (first(entity, code) === undefined) faults.push(`${where}: no group ${code}`);
    }
    if (!(kind in needs)) faults.push(`${where}: unexpected`);
    if (kind === 'LWPOLYLINE') {
      const count = (code: number) => entity.filter((group) => group.code === code).length;
      if (Number(first(entity, 90)) !== count(10) || count(10) !== count(20)) faults.push(`${where}: vertex count`);
    }
    if ((kind === 'CIRCLE' || kind === 'TEXT') && !(Number(first(entity, 40)) > 0)) faults.push(`${where}: size`);
  }
  const all = [...sections.entries()].filter(([name]) => name !== 'HEADER').flatMap(([, body]) => recordsOf(body));
  const handles = all.flatMap((record) => first(record, record[0]!.value === 'DIMSTYLE' ? 105 : 5) ?? []);
  if (new Set(handles.map((handle) => handle.toUpperCase())).size !== handles.length) faults.push('a handle twice');
  const known = new Set([...handles.map((handle) => handle.toUpperCase()), '0']);
  for (const record of entities) {
    const owner = first(record, 330);
    if (owner !== undefined && !known.has(owner.toUpperCase())) faults.push(`owner ${owner} does not exist`);
  }
  const seed = headerValue(sections.get('HEADER') ?? [], '$HANDSEED');
  const highest = Math.max(...handles.map((handle) => Number.parseInt(handle, 16)));
  if (seed !== undefined && Number.parseInt(seed, 16) <= highest) faults.push('$HANDSEED is not above every handle');
  return faults;
}

interface Group {
  code: number;
  value: string;
  line: number;
}

const needs: Record<string, number[]> = {
  LINE: [5, 8, 10, 20, 11, 21],
  LWPOLYLINE: [5, 8, 90, 70, 10, 20],
  CIRCLE: [5, 8, 10, 20, 40],
  TEXT: [5, 8, 10, 20, 40, 1],
};

const between = (code: number, ...ranges: [number, number][]): boolean =>
  ranges.some(([from, to]) => code >= from && code <= to);
const isReal = (code: number) => between(code, [10, 59], [110, 149], [210, 239], [460, 469]);
const isInteger = (code: number) => between(code, [60, 79], [90, 99], [160, 179], [270, 289], [370, 389], [420, 429]);
const isHandle = (code: number) => between(code, [5, 5], [105, 105], [320, 369], [390, 399]);
const first = (record: Group[], code: number): string | undefined =>
  record.find((group) => group.code === code)?.value.trim();

function sectionsOf(groups: Group[], faults: string[]): Map<string, Group[]> {
  const sections = new Map<string, Group[]>();
  let open: Group[] | null = null;
  for (const [i, group] of groups.entries()) {
    if (group.code === 0 && group.value === 'SECTION') {
      if (open) faults.push(`line ${group.line}: a section in a section`);
      open = [];
      sections.set(groups[i + 1]?.value ?? '', open);
    } else if (group.code === 0 && group.value === 'ENDSEC') open = null;
    else if (open) open.push(group);
  }
  if (open) faults.push('the last section is not closed');
  const last = groups.at(-1);
  if (last?.code !== 0 || last.value !== 'EOF') faults.push('no EOF');
  return sections;
}

/** Groups from one 0 to the next. */
function recordsOf(body: Group[]): Group[][] {
  const starts = body.flatMap(({ code }, i) => (code === 0 ? [i] : []));
  return starts.map((start, i) => body.slice(start, starts[i + 1]));
}

function headerValue(header: Group[], name: string): string | undefined {
  const at = header.findIndex(({ code, value }) => code === 9 && value === name);
  return at < 0 ? undefined : header[at + 1]?.value.trim();
}

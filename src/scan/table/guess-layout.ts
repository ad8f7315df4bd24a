import type { TableLayout, TableReading, TableSeparator } from '../raw-scan';
import { lineFields } from './line-fields';

const COMMENT = /^\s*(#|\/\/|%|!|;)/;
const candidates: readonly TableSeparator[] = ['semicolon', 'tab', 'bar', 'comma', 'blank'];
const fewest = 3;

export const isComment = (line: string): boolean => COMMENT.test(line);

/**
 * How the lines of a text make points, judged by the first of them; null where none holds three numbers.
 * @param lines the first lines, whole
 */
export function guessLayout(lines: readonly string[]): TableReading | null {
  const told = lines.filter((line) => line.trim() !== '' && !isComment(line));
  const comments = lines.filter(isComment);
  let best: { layout: Omit<TableLayout, 'columns'>; score: number } | null = null;
  for (const separator of candidates) {
    for (const decimal of separator === 'comma' ? (['point'] as const) : (['point', 'comma'] as const)) {
      const score = told.filter((line) => numeric(line, { separator, decimal })).length;
      if (score > (best?.score ?? 0)) best = { layout: { separator, decimal }, score };
    }
  }
  if (!best) return null;
  const { layout } = best;
  const rows = told.filter((line) => numeric(line, layout));
  const first = told.indexOf(rows[0]!);
  const fields = lineFields(rows[0]!, layout.separator);
  const names = namesAbove([...comments, ...told.slice(0, first)], layout.separator, fields.length);
  return {
    ...layout,
    columns: columnsOf(
      names,
      fields.map((field) => isNumber(field, layout.decimal)),
    ),
    names,
    width: fields.length,
    sample: rows.slice(0, 3).map((line) => line.slice(0, 200)),
  };
}

/** True where a line begins with three numbers, or has three among its fields. */
const numeric = (line: string, { separator, decimal }: Omit<TableLayout, 'columns'>): boolean =>
  lineFields(line, separator).filter((field) => isNumber(field, decimal)).length >= fewest;

function isNumber(field: string, decimal: 'point' | 'comma'): boolean {
  const text = decimal === 'comma' ? field.replace(',', '.') : field;
  return (decimal === 'point' || !field.includes('.')) && /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text);
}

/** The line of names nearest above the numbers that has one for each column. */
function namesAbove(lines: readonly string[], separator: TableSeparator, width: number): string[] | null {
  for (const line of lines.toReversed()) {
    const bare = line.replace(COMMENT, '').trim();
    for (const each of [separator, 'comma', 'blank'] as const) {
      const names = lineFields(bare, each);
      if (names.length === width && axisOf(names, 0) >= 0 && axisOf(names, 1) >= 0 && axisOf(names, 2) >= 0)
        return names;
    }
  }
  return null;
}

const axisNames: readonly RegExp[] = [
  /^(x|easting|east|points[:_]0|x[ _]?coord.*|x[ _]?[([]?(m|mm|cm|in|ft)[)\]]?)$/i,
  /^(y|northing|north|points[:_]1|y[ _]?coord.*|y[ _]?[([]?(m|mm|cm|in|ft)[)\]]?)$/i,
  /^(z|height|elevation|points[:_]2|z[ _]?coord.*|z[ _]?[([]?(m|mm|cm|in|ft)[)\]]?)$/i,
];

const axisOf = (names: readonly string[], axis: number): number =>
  names.findIndex((name) => axisNames[axis]!.test(name));

function columnsOf(names: readonly string[] | null, numbers: readonly boolean[]): [number, number, number] {
  if (names) return [axisOf(names, 0), axisOf(names, 1), axisOf(names, 2)];
  const [x = 0, y = 1, z = 2] = numbers.flatMap((number, column) => (number ? [column] : []));
  return [x, y, z];
}

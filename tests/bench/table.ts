import { type Asked, isMet, type Measured, type Row, ratioOf } from './bench';
import { type KeptFigure, type KeptRun, lastKept } from './history';

/** Columns of the table, in order. */
export const TABLE_COLUMNS = [
  'bench',
  'figure',
  'value',
  'unit',
  'against',
  'ratio',
  'asked',
  'met',
  'before',
  'note',
] as const;
const TO_THE_RIGHT = ['value', 'ratio', 'before'];

/**
 * One text table of the rows of several benches, columns aligned, no line ending at its end.
 * @param kept earlier runs: `before` is what the ratio was when it was last kept, or the value where there is no ratio
 */
export function table(benches: readonly Measured[], kept: readonly KeptRun[] = []): string {
  return aligned(
    TABLE_COLUMNS,
    benches.flatMap(({ name, rows }) => rows.map((row) => cellsOf(name, row, lastKept(kept, name, row.what)))),
    TO_THE_RIGHT,
  );
}

/** The kept figures of these benches, a column for each run, oldest first. Ratios where there are any. */
export function historyTable(runs: readonly KeptRun[], names: readonly string[]): string {
  const asked = ({ bench }: KeptFigure) => names.length === 0 || names.includes(bench);
  const all = runs.flatMap(({ figures }) => figures.filter(asked));
  const lines = [...new Map(all.map((each) => [`${each.bench}\n${each.what}`, each])).values()];
  const columns = runs.map(({ date, commit }) => `${date} ${commit}`);
  return aligned(
    ['bench', 'figure', 'unit', ...columns],
    lines.map(({ bench, what, unit, ratio }) => [
      bench,
      what,
      ratio === null ? unitOf(unit) : 'ratio',
      ...runs.map((run) => shown(run.figures.find((each) => each.bench === bench && each.what === what) ?? null)),
    ]),
    columns,
  );
}

/** Columns in which nothing stands are left out. */
function aligned(names: readonly string[], rows: readonly string[][], toTheRight: readonly string[]): string {
  const used = names.map((_, column) => rows.some((row) => row[column] !== ''));
  const inUse = <T>(line: readonly T[]): T[] => line.filter((_, column) => used[column]);
  const head = inUse(names);
  const cells = rows.map(inUse);
  const widths = head.map((name, column) => Math.max(name.length, ...cells.map((row) => row[column]!.length)));
  const rule = widths.map((width) => '-'.repeat(width));
  const padded = (cell: string, column: number): string =>
    toTheRight.includes(head[column]!) ? cell.padStart(widths[column]!) : cell.padEnd(widths[column]!);
  return [head, rule, ...cells].map((row) => row.map(padded).join('  ').trimEnd()).join('\n');
}

function cellsOf(name: string, row: Row, before: KeptFigure | null): string[] {
  const { what, value, unit, against, asked, note } = row;
  const ratio = ratioOf(row);
  const met = isMet(row);
  return [
    name,
    what,
    figure(value),
    unitOf(unit),
    against ? `${against.what}: ${figure(against.value)}` : '',
    ratio === null ? '' : figure(ratio),
    asked ? boundOf(asked) : '',
    met === null ? '' : met ? 'yes' : 'NO',
    shown(before),
    note ?? '',
  ];
}

const unitOf = (unit: string): string => (unit === '1' ? '' : unit);

const boundOf = ({ of, atLeast, atMost }: Asked): string =>
  [
    of === 'ratio' ? 'ratio' : null,
    atLeast === undefined ? null : `≥ ${figure(atLeast)}`,
    atMost === undefined ? null : `≤ ${figure(atMost)}`,
  ]
    .filter((each) => each !== null)
    .join(' ');

const shown = (kept: KeptFigure | null): string => (kept === null ? '' : figure(kept.ratio ?? kept.value));

/** Four significant digits, whole numbers whole. */
function figure(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  if (Number.isInteger(value)) return String(value);
  return Math.abs(value) >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(4)));
}

import type { Row } from './bench';

const HEAD = ['bench', 'figure', 'value', 'unit', 'against', 'ratio', 'note'];
const TO_THE_RIGHT = new Set([2, 5]);

/** One text table of the rows of several benches, columns aligned, no line ending at its end. */
export function table(benches: readonly { name: string; rows: readonly Row[] }[]): string {
  const cells = benches.flatMap(({ name, rows }) => rows.map((row) => cellsOf(name, row)));
  const widths = HEAD.map((head, column) => Math.max(head.length, ...cells.map((row) => row[column]!.length)));
  const rule = widths.map((width) => '-'.repeat(width));
  return [HEAD, rule, ...cells]
    .map((row) =>
      row
        .map((cell, column) => padded(cell, widths[column]!, column))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function cellsOf(name: string, { what, value, unit, against, note }: Row): string[] {
  return [
    name,
    what,
    figure(value),
    unit === '1' ? '' : unit,
    against ? `${against.what}: ${figure(against.value)}` : '',
    against ? figure(value / against.value) : '',
    note ?? '',
  ];
}

/** Four significant digits, whole numbers whole. */
function figure(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  if (Number.isInteger(value)) return String(value);
  return Math.abs(value) >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(4)));
}

function padded(cell: string, width: number, column: number): string {
  return TO_THE_RIGHT.has(column) ? cell.padStart(width) : cell.padEnd(width);
}

/** Where x lies among increasing knots: the interval and the fraction along it, beyond the ends by extrapolation. */
function locate(knots: readonly number[], x: number): { i: number; t: number } {
  let i = 0;
  while (i + 2 < knots.length && knots[i + 1]! <= x) i++;
  const step = knots[i + 1]! - knots[i]!;
  return { i, t: (x - knots[i]!) / step };
}

/** A line sampled at increasing knots, between them and beyond as a straight line. */
export function lineThrough(knots: readonly number[], values: readonly number[]): (x: number) => number {
  if (knots.length < 2) return () => values[0] ?? 0;
  return (x) => {
    const { i, t } = locate(knots, x);
    return values[i]! * (1 - t) + values[i + 1]! * t;
  };
}

/** A surface sampled on a grid, `values[i][j]` at `rows[i]`, `columns[j]`; bilinear between and beyond. */
export function surfaceThrough(
  rows: readonly number[],
  columns: readonly number[],
  values: readonly (readonly number[])[],
): (row: number, column: number) => number {
  const lines = values.map((line) => lineThrough(columns, line));
  if (rows.length < 2) return (_row, column) => lines[0]?.(column) ?? 0;
  return (row, column) => {
    const { i, t } = locate(rows, row);
    return lines[i]!(column) * (1 - t) + lines[i + 1]!(column) * t;
  };
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

import type { SplineGrid } from './splineGrid';

/** A spline surface's value or one of its derivatives at a place, of given coefficients. */
export type SplineSum = (coefficients: Float64Array) => number;

/**
 * The derivative of order (du, dv) of spline surfaces on a grid at (u, v); beyond the rectangle they go on straight, as
 * they leave the edge.
 */
export function splineAt(grid: SplineGrid, u: number, v: number, du: number, dv: number): SplineSum {
  const { columns, rows, u0, v0, cellWidth, cellHeight, across } = grid;
  const x = axisTerms((u - u0) / cellWidth, columns, du);
  const y = axisTerms((v - v0) / cellHeight, rows, dv);
  const unit = 1 / (cellWidth ** du * cellHeight ** dv);
  const first = x.cell + y.cell * across;
  return (c) => unit * (y.a * row(c, first, x) + y.b * row(c, first + across, x) + y.c * row(c, first + 2 * across, x));
}

/** The splines that are not nought at (u, v) by number, in ascending order, and their values there. */
export function splineWeights(grid: SplineGrid, u: number, v: number): { at: number[]; weight: number[] } {
  const { columns, rows, u0, v0, cellWidth, cellHeight, across } = grid;
  const x = axisTerms((u - u0) / cellWidth, columns, 0);
  const y = axisTerms((v - v0) / cellHeight, rows, 0);
  const [along, up] = [
    [x.a, x.b, x.c],
    [y.a, y.b, y.c],
  ];
  const first = x.cell + y.cell * across;
  return {
    at: up.flatMap((_, q) => along.map((_, p) => first + p + q * across)),
    weight: up.flatMap((b) => along.map((a) => a * b)),
  };
}

const row = (of: Float64Array, k: number, { a, b, c }: AxisTerms): number =>
  a * (of[k] as number) + b * (of[k + 1] as number) + c * (of[k + 2] as number);

/** The three splines over a cell, or their first or second derivatives by the cell's width. */
interface AxisTerms {
  cell: number;
  a: number;
  b: number;
  c: number;
}

function axisTerms(at: number, cells: number, order: number): AxisTerms {
  const inside = Math.min(Math.max(at, 0), cells);
  const cell = Math.min(Math.floor(inside), cells - 1);
  const x = inside - cell;
  const past = at - inside;
  if (order === 0) {
    const [a, b, c] = [(1 - x) ** 2 / 2, 0.5 + x - x * x, (x * x) / 2];
    return { cell, a: a + past * (x - 1), b: b + past * (1 - 2 * x), c: c + past * x };
  }
  if (order === 1) return { cell, a: x - 1, b: 1 - 2 * x, c: x };
  return past === 0 ? { cell, a: 1, b: -2, c: 1 } : { cell, a: 0, b: 0, c: 0 };
}

import type { SplineGrid } from './splineGrid';
import type { BendingStiffness } from './stiffness';

/**
 * A symmetric matrix over the splines of a grid: row k holds 25 entries, entry (p + 2) + 5(q + 2) for the neighbour
 * p columns and q rows away; zero where there is none.
 */
export interface Stencil {
  across: number;
  up: number;
  entries: Float64Array;
}

export const WIDTH = 5;
export const SIZE = WIDTH * WIDTH;
export const CENTRE = 12;

/** ∫∫ of the bending energy's second variation: free plate, no edge held. N/mm. */
export function plateStencil(grid: SplineGrid, stiffness: BendingStiffness): Stencil {
  const { columns, rows, cellWidth: a, cellHeight: b, across, up } = grid;
  const x = bands(columns);
  const y = bands(rows);
  const entries = new Float64Array(across * up * SIZE);
  const [uu, vv] = [(stiffness.u * b) / a ** 3, (stiffness.v * a) / b ** 3];
  const [cross, twist] = [stiffness.cross / (a * b), (4 * stiffness.twist) / (a * b)];
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      for (let q = 0; q < WIDTH; q++) {
        for (let p = 0; p < WIDTH; p++) {
          const [s, t] = [i * WIDTH + p, j * WIDTH + q];
          entries[(i + j * across) * SIZE + p + WIDTH * q] =
            uu * of(x.bend, s) * of(y.mass, t) +
            vv * of(x.mass, s) * of(y.bend, t) +
            cross * (of(x.bendMass, s) * of(y.massBend, t) + of(x.massBend, s) * of(y.bendMass, t)) +
            twist * of(x.slope, s) * of(y.slope, t);
        }
      }
    }
  }
  return { across, up, entries };
}

/** ∫∫ of each spline, mm²: what a pressure of 1 N/mm² puts on it, N. */
export function areasOf({ columns, rows, cellWidth, cellHeight, across, up }: SplineGrid): Float64Array {
  const areas = new Float64Array(across * up);
  const [x, y] = [lengths(columns), lengths(rows)];
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) areas[i + j * across] = of(x, i) * of(y, j) * cellWidth * cellHeight;
  }
  return areas;
}

/** What the matrix makes of a vector. */
export function times({ across, up, entries }: Stencil, x: Float64Array, out: Float64Array): Float64Array {
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) out[i + j * across] = rowTimes(entries, x, i, j, across, up);
  }
  return out;
}

/** One row by a vector. */
export function rowTimes(
  entries: Float64Array,
  x: Float64Array,
  i: number,
  j: number,
  across: number,
  up: number,
): number {
  const row = (i + j * across) * SIZE;
  let sum = 0;
  if (i >= 2 && j >= 2 && i < across - 2 && j < up - 2) {
    let k = i - 2 + (j - 2) * across;
    for (let e = row; e < row + SIZE; e += WIDTH, k += across) {
      sum +=
        (entries[e] as number) * (x[k] as number) +
        (entries[e + 1] as number) * (x[k + 1] as number) +
        (entries[e + 2] as number) * (x[k + 2] as number) +
        (entries[e + 3] as number) * (x[k + 3] as number) +
        (entries[e + 4] as number) * (x[k + 4] as number);
    }
    return sum;
  }
  const [q0, q1] = [Math.max(0, 2 - j), Math.min(WIDTH, up + 2 - j)];
  const [p0, p1] = [Math.max(0, 2 - i), Math.min(WIDTH, across + 2 - i)];
  for (let q = q0; q < q1; q++) {
    for (let p = p0; p < p1; p++) {
      sum += (entries[row + p + WIDTH * q] as number) * (x[i + p - 2 + (j + q - 2) * across] as number);
    }
  }
  return sum;
}

const of = (list: ArrayLike<number>, k: number): number => list[k] as number;

/** The three splines over a cell of width 1: 1, x and x² coefficients. */
const PIECES = [
  [0.5, -1, 0.5],
  [0.5, 1, -1],
  [0, 0, 0.5],
] as const;

const derivative = (p: readonly number[]): number[] => p.slice(1).map((c, k) => c * (k + 1));

/** ∫ of a product of polynomials over 0 … 1. */
function integral(p: readonly number[], q: readonly number[]): number {
  let sum = 0;
  for (let a = 0; a < p.length; a++) for (let b = 0; b < q.length; b++) sum += (of(p, a) * of(q, b)) / (a + b + 1);
  return sum;
}

interface Bands {
  mass: Float64Array;
  slope: Float64Array;
  bend: Float64Array;
  /** second derivative of the row's spline by the column's, and the other way round */
  bendMass: Float64Array;
  massBend: Float64Array;
}

/** Products of splines along one axis of so many cells of width 1, integrated: five diagonals each. */
function bands(cells: number): Bands {
  const band = (): Float64Array => new Float64Array((cells + 2) * WIDTH);
  const result = { mass: band(), slope: band(), bend: band(), bendMass: band(), massBend: band() };
  PIECES.forEach((row, a) => {
    PIECES.forEach((column, b) => {
      const [slopeA, slopeB] = [derivative(row), derivative(column)];
      const [bendA, bendB] = [derivative(slopeA), derivative(slopeB)];
      const parts: [Float64Array, number][] = [
        [result.mass, integral(row, column)],
        [result.slope, integral(slopeA, slopeB)],
        [result.bend, integral(bendA, bendB)],
        [result.bendMass, integral(bendA, column)],
        [result.massBend, integral(row, bendB)],
      ];
      for (const [target, value] of parts) {
        for (let cell = 0; cell < cells; cell++) {
          const k = (cell + a) * WIDTH + b - a + 2;
          target[k] = of(target, k) + value;
        }
      }
    });
  });
  return result;
}

/** ∫ of each spline along one axis, by the cell's width. */
function lengths(cells: number): Float64Array {
  const sums = new Float64Array(cells + 2);
  PIECES.forEach((piece, a) => {
    for (let cell = 0; cell < cells; cell++) sums[cell + a] = of(sums, cell + a) + integral(piece, [1]);
  });
  return sums;
}

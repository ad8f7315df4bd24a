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
  const [x, y] = [bands(columns), bands(rows)];
  const entries = new Float64Array(across * up * SIZE);
  const [uu, vv] = [(stiffness.u * b) / a ** 3, (stiffness.v * a) / b ** 3];
  const [cross, twist] = [stiffness.cross / (a * b), (4 * stiffness.twist) / (a * b)];
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const row = (i + j * across) * SIZE;
      // All rows that no edge cuts are alike.
      const alike = (alikeAs(i, across) + alikeAs(j, up) * across) * SIZE;
      if (alike < row) {
        entries.copyWithin(row, alike, alike + SIZE);
        continue;
      }
      for (let q = 0; q < WIDTH; q++) {
        for (let p = 0; p < WIDTH; p++) {
          const [s, t] = [i * WIDTH + p, j * WIDTH + q];
          entries[row + p + WIDTH * q] =
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

const alikeAs = (i: number, count: number): number => (i < 2 || i >= count - 2 ? i : 2);

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
    for (let i = 0; i < across; i++) out[i + j * across] = rowSum(entries, x, i, j, across, up);
  }
  return out;
}

/** Row (i, j) by a vector. */
export function rowSum(a: Float64Array, x: Float64Array, i: number, j: number, across: number, up: number): number {
  const k = i + j * across;
  return sumBefore(a, x, i, j, across, up) + a[k * SIZE + CENTRE]! * x[k]! + sumAfter(a, x, i, j, across, up);
}

/** What stands before the diagonal in row (i, j), by a vector. */
export function sumBefore(a: Float64Array, x: Float64Array, i: number, j: number, across: number, up: number): number {
  const k = i + j * across;
  // Beyond the ends of a grid's row its entries are nought: there the next row may be read.
  if (k < 2 * across + 2) return edgeSum(a, x, i, j, across, up, 0, CENTRE);
  const row = k * SIZE;
  const a1 = k - across;
  const a2 = a1 - across;
  return (
    a[row]! * x[a2 - 2]! +
    a[row + 1]! * x[a2 - 1]! +
    a[row + 2]! * x[a2]! +
    a[row + 3]! * x[a2 + 1]! +
    a[row + 4]! * x[a2 + 2]! +
    a[row + 5]! * x[a1 - 2]! +
    a[row + 6]! * x[a1 - 1]! +
    a[row + 7]! * x[a1]! +
    a[row + 8]! * x[a1 + 1]! +
    a[row + 9]! * x[a1 + 2]! +
    a[row + 10]! * x[k - 2]! +
    a[row + 11]! * x[k - 1]!
  );
}

/** What stands after it. */
export function sumAfter(a: Float64Array, x: Float64Array, i: number, j: number, across: number, up: number): number {
  const k = i + j * across;
  if (k + 2 * across + 2 >= x.length) return edgeSum(a, x, i, j, across, up, CENTRE + 1, SIZE);
  const row = k * SIZE;
  const b1 = k + across;
  const b2 = b1 + across;
  return (
    a[row + 13]! * x[k + 1]! +
    a[row + 14]! * x[k + 2]! +
    a[row + 15]! * x[b1 - 2]! +
    a[row + 16]! * x[b1 - 1]! +
    a[row + 17]! * x[b1]! +
    a[row + 18]! * x[b1 + 1]! +
    a[row + 19]! * x[b1 + 2]! +
    a[row + 20]! * x[b2 - 2]! +
    a[row + 21]! * x[b2 - 1]! +
    a[row + 22]! * x[b2]! +
    a[row + 23]! * x[b2 + 1]! +
    a[row + 24]! * x[b2 + 2]!
  );
}

/** Entries `from` up to `to` of a row that the edge cuts, by a vector. */
function edgeSum(
  a: Float64Array,
  x: Float64Array,
  i: number,
  j: number,
  across: number,
  up: number,
  from: number,
  to: number,
): number {
  const row = (i + j * across) * SIZE;
  let sum = 0;
  let p = i - 2 + (from % WIDTH);
  let q = j - 2 + Math.floor(from / WIDTH);
  for (let e = from; e < to; e++) {
    if (p >= 0 && q >= 0 && p < across && q < up) sum += a[row + e]! * x[p + q * across]!;
    if (++p === i + 3) {
      p = i - 2;
      q++;
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

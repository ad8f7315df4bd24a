import { SIZE, type Stencil, WIDTH } from './stencil';

/*
 * Between a grid and the one twice as coarse. Quadratic splines are nested: a coarse one is 1/4, 3/4, 3/4, 1/4 of fine
 * ones 2I − 2 … 2I + 1 along each axis, so that nothing is lost in going up and energies agree exactly.
 */

/** Number of coarse splines along an axis of so many fine ones. */
const coarse = (fine: number): number => (fine - 2) / 2 + 2;

/** Lower parent m of fine spline i, and the weights of parents m and m + 1. */
const LOWER = [0.75, 0.25] as const;
const UPPER = [0.25, 0.75] as const;
const weightsOf = (i: number): readonly [number, number] => (i % 2 === 0 ? LOWER : UPPER);

/** Coefficients of the same surface on the fine grid, added to `out`. */
export function prolong(x: Float64Array, out: Float64Array, across: number, up: number): void {
  const wide = coarse(across);
  for (let j = 0; j < up; j++) {
    const [y0, y1] = weightsOf(j);
    for (let i = 0; i < across; i++) {
      const [x0, x1] = weightsOf(i);
      const k = (i >> 1) + (j >> 1) * wide;
      out[i + j * across] =
        (out[i + j * across] as number) +
        y0 * (x0 * (x[k] as number) + x1 * (x[k + 1] as number)) +
        y1 * (x0 * (x[k + wide] as number) + x1 * (x[k + wide + 1] as number));
    }
  }
}

/** Forces on the coarse splines: the transpose of `prolong`. */
export function restrict(forces: Float64Array, out: Float64Array, across: number, up: number): void {
  const wide = coarse(across);
  out.fill(0);
  for (let j = 0; j < up; j++) {
    const [y0, y1] = weightsOf(j);
    for (let i = 0; i < across; i++) {
      const [x0, x1] = weightsOf(i);
      const k = (i >> 1) + (j >> 1) * wide;
      const force = forces[i + j * across] as number;
      out[k] = (out[k] as number) + x0 * y0 * force;
      out[k + 1] = (out[k + 1] as number) + x1 * y0 * force;
      out[k + wide] = (out[k + wide] as number) + x0 * y1 * force;
      out[k + wide + 1] = (out[k + wide + 1] as number) + x1 * y1 * force;
    }
  }
}

/** The matrix on the coarse grid: PᵀAP, into `out`. */
export function coarsen({ across, up, entries }: Stencil, out: Stencil): void {
  const wide = coarse(across);
  const along = new Float64Array(4 * WIDTH);
  const product = new Float64Array(16);
  out.entries.fill(0);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const row = (i + j * across) * SIZE;
      if (!rowTimesParents(entries, row, i, j, along, product)) continue;
      for (let b = 0; b < 2; b++) {
        for (let a = 0; a < 2; a++) {
          const weight = (weightsOf(i)[a] as number) * (weightsOf(j)[b] as number);
          // product holds parents m − 1 … m + 2; of parent m + a they are the neighbours −1 − a … 2 − a
          const target = ((i >> 1) + a + ((j >> 1) + b) * wide) * SIZE + (1 - a) + WIDTH * (1 - b);
          for (let q = 0; q < 4; q++) {
            for (let p = 0; p < 4; p++) {
              const e = target + p + WIDTH * q;
              out.entries[e] = (out.entries[e] as number) + weight * (product[p + 4 * q] as number);
            }
          }
        }
      }
    }
  }
}

/** Row (i, j) of AP: its entries at the parents m − 1 … m + 2 of both axes. False where the row is empty. */
function rowTimesParents(
  entries: Float64Array,
  row: number,
  i: number,
  j: number,
  along: Float64Array,
  product: Float64Array,
): boolean {
  if (entries[row + 12] === 0) return false;
  along.fill(0);
  product.fill(0);
  for (let p = 0; p < WIDTH; p++) {
    const [first, weights] = parentOf(i, p);
    for (let q = 0; q < WIDTH; q++) {
      const entry = entries[row + p + WIDTH * q] as number;
      const k = first + 4 * q;
      along[k] = (along[k] as number) + weights[0] * entry;
      along[k + 1] = (along[k + 1] as number) + weights[1] * entry;
    }
  }
  for (let q = 0; q < WIDTH; q++) {
    const [first, weights] = parentOf(j, q);
    for (let p = 0; p < 4; p++) {
      const value = along[p + 4 * q] as number;
      const k = p + 4 * first;
      product[k] = (product[k] as number) + weights[0] * value;
      product[k + 4] = (product[k + 4] as number) + weights[1] * value;
    }
  }
  return true;
}

/** Of the neighbour at `offset` 0 … 4 of spline i: its lower parent, counted from parent m − 1 of i, and the weights. */
function parentOf(i: number, offset: number): [number, readonly [number, number]] {
  const neighbour = i + offset - 2 + 4;
  return [(neighbour >> 1) - ((i >> 1) + 1), weightsOf(neighbour)];
}

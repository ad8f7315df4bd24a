import { CENTRE, SIZE, type Stencil, WIDTH } from './stencil';

/*
 * Between a grid and the one twice as coarse. Quadratic splines are nested: a coarse one is 1/4, 3/4, 3/4, 1/4 of fine
 * ones 2I − 2 … 2I + 1 along each axis, so that nothing is lost in going up and energies agree exactly.
 */

/** Number of coarse splines along an axis of so many fine ones. */
const coarse = (fine: number): number => (fine - 2) / 2 + 2;

/** Weight of the lower parent, i >> 1, of fine spline i; the upper one has the rest. */
const lowerWeight = (i: number): number => (i % 2 === 0 ? 0.75 : 0.25);

/** Coefficients of the same surface on the fine grid, added to `out`. */
export function prolong(x: Float64Array, out: Float64Array, across: number, up: number): void {
  const wide = coarse(across);
  for (let j = 0; j < up; j++) {
    const y0 = lowerWeight(j);
    const y1 = 1 - y0;
    for (let i = 0; i < across; i++) {
      const x0 = lowerWeight(i);
      const x1 = 1 - x0;
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
    const y0 = lowerWeight(j);
    const y1 = 1 - y0;
    for (let i = 0; i < across; i++) {
      const x0 = lowerWeight(i);
      const x1 = 1 - x0;
      const k = (i >> 1) + (j >> 1) * wide;
      const force = forces[i + j * across] as number;
      out[k] = (out[k] as number) + x0 * y0 * force;
      out[k + 1] = (out[k + 1] as number) + x1 * y0 * force;
      out[k + wide] = (out[k + wide] as number) + x0 * y1 * force;
      out[k + wide + 1] = (out[k + wide + 1] as number) + x1 * y1 * force;
    }
  }
}

/** The matrix on the coarse grid: PᵀAP, into the wanted rows of `out`; the others are left alone. */
export function coarsenRows({ across, up, entries }: Stencil, wanted: Uint8Array, out: Stencil): void {
  const wide = coarse(across);
  const along = new Float64Array(4 * WIDTH);
  const product = new Float64Array(16);
  for (let k = 0; k < wanted.length; k++) if (wanted[k]) out.entries.fill(0, k * SIZE, (k + 1) * SIZE);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const parent = (i >> 1) + (j >> 1) * wide;
      if (!(wanted[parent] || wanted[parent + 1] || wanted[parent + wide] || wanted[parent + wide + 1])) continue;
      const row = (i + j * across) * SIZE;
      if (entries[row + CENTRE] === 0) continue;
      rowTimesParents(entries, row, i, j, along, product);
      for (let b = 0; b < 2; b++) {
        for (let a = 0; a < 2; a++) {
          const target = parent + a + b * wide;
          if (!wanted[target]) continue;
          const x = a === 0 ? lowerWeight(i) : 1 - lowerWeight(i);
          const y = b === 0 ? lowerWeight(j) : 1 - lowerWeight(j);
          // product holds parents m − 1 … m + 2; of parent m + a they are the neighbours −1 − a … 2 − a
          addTo(out.entries, target * SIZE + (1 - a) + WIDTH * (1 - b), x * y, product);
        }
      }
    }
  }
}

function addTo(entries: Float64Array, target: number, weight: number, product: Float64Array): void {
  for (let q = 0; q < 4; q++) {
    for (let p = 0; p < 4; p++) {
      const e = target + p + WIDTH * q;
      entries[e] = entries[e]! + weight * product[p + 4 * q]!;
    }
  }
}

/** Row (i, j) of AP: its entries at the parents m − 1 … m + 2 of both axes. */
function rowTimesParents(
  entries: Float64Array,
  row: number,
  i: number,
  j: number,
  along: Float64Array,
  product: Float64Array,
): void {
  along.fill(0);
  product.fill(0);
  for (let p = 0; p < WIDTH; p++) {
    const first = firstParent(i, p);
    const weight = lowerWeight(i + p);
    for (let q = 0; q < WIDTH; q++) {
      const entry = entries[row + p + WIDTH * q]!;
      const k = first + 4 * q;
      along[k] = along[k]! + weight * entry;
      along[k + 1] = along[k + 1]! + (1 - weight) * entry;
    }
  }
  for (let q = 0; q < WIDTH; q++) {
    const first = 4 * firstParent(j, q);
    const weight = lowerWeight(j + q);
    for (let k = first; k < first + 4; k++) {
      const value = along[k - first + 4 * q]!;
      product[k] = product[k]! + weight * value;
      product[k + 4] = product[k + 4]! + (1 - weight) * value;
    }
  }
}

/** Of the neighbour at `offset` 0 … 4 of spline i: its lower parent, counted from parent m − 1 of i. */
const firstParent = (i: number, offset: number): number => ((i + offset + 2) >> 1) - ((i >> 1) + 1);

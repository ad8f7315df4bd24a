import { CUT, GONE } from './rowState';
import { CENTRE, rowSum, SIZE, type Stencil, WIDTH } from './stencil';

/** A matrix over the free splines alone, each tied by a spring of its own, N/mm; rows of held splines are zero. */
export interface Tied extends Stencil {
  ties: Float64Array;
}

/** Of each row what is left of it, and whether that has changed since it was written. */
export interface Rows {
  states: Uint8Array;
  stale: Uint8Array;
}

export const emptyTied = (across: number, up: number): Tied => ({
  across,
  up,
  entries: new Float64Array(across * up * SIZE),
  ties: new Float64Array(across * up),
});

/** Rewrites the stale rows. */
export function truncate(
  { across, up, entries }: Stencil,
  held: Uint8Array,
  { states, stale }: Rows,
  out: Float64Array,
): void {
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      const row = k * SIZE;
      if (!stale[k] || copiesRow(states[k]!, entries, row, out)) continue;
      for (let q = Math.max(0, 2 - j); q < Math.min(WIDTH, up + 2 - j); q++) {
        for (let p = Math.max(0, 2 - i); p < Math.min(WIDTH, across + 2 - i); p++) {
          const e = row + p + WIDTH * q;
          out[e] = held[i + p - 2 + (j + q - 2) * across] ? 0 : entries[e]!;
        }
      }
    }
  }
}

/** Writes a row that is whole or gone; false where it is cut. */
export function copiesRow(state: number, entries: Float64Array, row: number, out: Float64Array): boolean {
  if (state === CUT) return false;
  if (state === GONE) out.fill(0, row, row + SIZE);
  else for (let e = row; e < row + SIZE; e++) out[e] = entries[e]!;
  return true;
}

/** What the matrix makes of a vector. */
export function tiedTimes({ across, up, entries, ties }: Tied, x: Float64Array, out: Float64Array): void {
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      out[k] = entries[k * SIZE + CENTRE]! > 0 ? rowSum(entries, x, i, j, across, up) + ties[k]! * x[k]! : 0;
    }
  }
}

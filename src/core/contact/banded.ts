import { SIZE, type Stencil, WIDTH } from './stencil';

/** A symmetric positive definite matrix as the lower half of its band: row i holds entries i − width … i. */
export interface Banded {
  count: number;
  width: number;
  rows: Float64Array;
}

/** The lower half of a stencil's matrix as a band. */
export function bandOf({ across, up, entries }: Stencil): Banded {
  const [count, width] = [across * up, 2 * across + 2];
  const rows = new Float64Array(count * (width + 1));
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      for (let e = 0; e < SIZE; e++) {
        const [p, q] = [i + (e % WIDTH) - 2, j + Math.floor(e / WIDTH) - 2];
        const l = p + q * across;
        if (p < 0 || q < 0 || p >= across || l > k) continue;
        rows[k * (width + 1) + width + l - k] = entries[k * SIZE + e]!;
      }
    }
  }
  return { count, width, rows };
}

/** Cholesky's factorisation A = L Lᵀ in place, the band its own; false where A is not positive definite. */
export function factorBand({ count, width, rows }: Banded): boolean {
  const wide = width + 1;
  for (let i = 0; i < count; i++) {
    const first = Math.max(0, i - width);
    for (let j = first; j <= i; j++) {
      let sum = rows[i * wide + width + j - i]!;
      const [a, b] = [i * wide + width - i, j * wide + width - j];
      for (let k = Math.max(first, j - width); k < j; k++) sum -= rows[a + k]! * rows[b + k]!;
      if (i !== j) rows[a + j] = sum / rows[j * wide + width]!;
      else if (!(sum > 0)) return false;
      else rows[a + i] = Math.sqrt(sum);
    }
  }
  return true;
}

/** Solves L Lᵀ x = b in place. */
export function solveBand({ count, width, rows }: Banded, b: Float64Array): Float64Array {
  const wide = width + 1;
  for (let i = 0; i < count; i++) {
    const row = i * wide + width - i;
    let sum = b[i]!;
    for (let k = Math.max(0, i - width); k < i; k++) sum -= rows[row + k]! * b[k]!;
    b[i] = sum / rows[row + i]!;
  }
  for (let i = count - 1; i >= 0; i--) {
    const row = i * wide + width - i;
    b[i]! /= rows[row + i]!;
    for (let k = Math.max(0, i - width); k < i; k++) b[k]! -= rows[row + k]! * b[i]!;
  }
  return b;
}

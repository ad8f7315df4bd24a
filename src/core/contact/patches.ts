import { CUT } from './rowState';
import { CENTRE, rowSum, SIZE, WIDTH } from './stencil';
import type { Tied } from './truncated';

const SIDE = 3;
const MOST = SIDE * SIDE;
/** Least pivot, share of the diagonal. */
const LEAST = 1e-13;

/**
 * Blocks of 3 × 3 splines about each that lost some of its children to the wall. There truncated coarse splines are far
 * stiffer than their neighbours, unless they move together so that the sheet keeps to the wall; one by one they cannot.
 * Solving block by block is what keeps multigrid as quick on fine grids as on coarse ones (Schöberl, Numer. Math. 84
 * (1999) 97–119; Lee, Wu, Xu and Zikatanov, Math. Models Methods Appl. Sci. 17 (2007) 1937–1963).
 */
export interface Patches {
  count: number;
  /** nine splines each, −1 where there is none or it is gone */
  splines: Int32Array;
  /** Cholesky factor of each block, 9 × 9, row by row */
  factors: Float64Array;
}

export function patchesOn({ across, up, entries, ties }: Tied, children: Uint8Array): Patches {
  let count = 0;
  for (const state of children) if (state === CUT) count++;
  const splines = new Int32Array(count * MOST).fill(-1);
  const factors = new Float64Array(count * MOST * MOST);
  let patch = 0;
  for (let k = 0; k < children.length; k++) {
    if (children[k] !== CUT) continue;
    const at = patch++ * MOST;
    const [i, j] = [k % across, Math.floor(k / across)];
    for (let n = 0; n < MOST; n++) {
      const [p, q] = [i + (n % SIDE) - 1, j + Math.floor(n / SIDE) - 1];
      const spline = p + q * across;
      if (p < 0 || q < 0 || p >= across || q >= up || entries[spline * SIZE + CENTRE]! <= 0) continue;
      splines[at + n] = spline;
    }
    factor(entries, ties, splines, at, factors);
  }
  return { count, splines, factors };
}

function factor(entries: Float64Array, ties: Float64Array, splines: Int32Array, at: number, out: Float64Array): void {
  const base = at * MOST;
  for (let a = 0; a < MOST; a++) {
    const spline = splines[at + a]!;
    const row = base + a * MOST;
    if (spline < 0) {
      out[row + a] = 1;
      continue;
    }
    for (let c = 0; c <= a; c++) {
      if (splines[at + c]! < 0) continue;
      const offset = CENTRE + (c % SIDE) - (a % SIDE) + WIDTH * (Math.floor(c / SIDE) - Math.floor(a / SIDE));
      let sum = entries[spline * SIZE + offset]!;
      const other = base + c * MOST;
      if (a === c) sum += ties[spline]!;
      const least = LEAST * sum;
      for (let k = 0; k < c; k++) sum -= out[row + k]! * out[other + k]!;
      out[row + c] = a === c ? Math.sqrt(Math.max(sum, least, 1e-300)) : sum / out[other + c]!;
    }
  }
}

/** Solves block after block on A x = b with what the ones before have done; forth or back. */
export function relaxPatches(
  { count, splines, factors }: Patches,
  { across, up, entries, ties }: Tied,
  b: Float64Array,
  x: Float64Array,
  back: boolean,
): void {
  const rest = new Float64Array(MOST);
  for (let n = 0; n < count; n++) {
    const at = (back ? count - 1 - n : n) * MOST;
    for (let a = 0; a < MOST; a++) {
      const k = splines[at + a]!;
      if (k < 0) rest[a] = 0;
      else {
        const j = Math.floor(k / across);
        rest[a] = b[k]! - rowSum(entries, x, k - j * across, j, across, up) - ties[k]! * x[k]!;
      }
    }
    substitute(factors, at * MOST, rest);
    for (let a = 0; a < MOST; a++) {
      const k = splines[at + a]!;
      if (k >= 0) x[k] = x[k]! + rest[a]!;
    }
  }
}

function substitute(factors: Float64Array, base: number, x: Float64Array): void {
  for (let a = 0; a < MOST; a++) {
    const row = base + a * MOST;
    let sum = x[a]!;
    for (let c = 0; c < a; c++) sum -= factors[row + c]! * x[c]!;
    x[a] = sum / factors[row + a]!;
  }
  for (let a = MOST - 1; a >= 0; a--) {
    const row = base + a * MOST;
    const value = x[a]! / factors[row + a]!;
    x[a] = value;
    for (let c = 0; c < a; c++) x[c] = x[c]! - factors[row + c]! * value;
  }
}

import { CENTRE, rowSum, SIZE, sumAfter, sumBefore } from './stencil';
import type { Tied } from './truncated';

/** One Gauss–Seidel sweep forth on A x = b from x = 0; rows that are gone stay at nought. */
export function sweepFromZero(matrix: Tied, b: Float64Array, x: Float64Array): void {
  const { across, up, entries, ties } = matrix;
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      const diagonal = entries[k * SIZE + CENTRE]!;
      x[k] = diagonal > 0 ? (b[k]! - sumBefore(entries, x, i, j, across, up)) / (diagonal + ties[k]!) : 0;
    }
  }
}

/** What such a sweep leaves: b − A x, which is what comes after the diagonal. */
export function restAfterSweep(matrix: Tied, x: Float64Array, out: Float64Array): void {
  const { across, up, entries } = matrix;
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      out[k] = entries[k * SIZE + CENTRE]! > 0 ? -sumAfter(entries, x, i, j, across, up) : 0;
    }
  }
}

/** One sweep back. */
export function sweepBack(matrix: Tied, b: Float64Array, x: Float64Array): void {
  const { across, up, entries, ties } = matrix;
  for (let j = up - 1; j >= 0; j--) {
    for (let i = across - 1; i >= 0; i--) {
      const k = i + j * across;
      const diagonal = entries[k * SIZE + CENTRE]!;
      if (diagonal <= 0) continue;
      const rest = b[k]! - rowSum(entries, x, i, j, across, up) - ties[k]! * x[k]!;
      x[k] = x[k]! + rest / (diagonal + ties[k]!);
    }
  }
}

import type { Basis } from './basis';

/** Stretch in mm that a spline covers with even intervals. */
export interface Stretch {
  from: number;
  to: number;
  intervals: number;
}

/**
 * Products of uniform cubic B-splines (de Boor, A Practical Guide to Splines, 2001, ch. IX): twice continuously
 * differentiable, a partition of unity over the stretches, falling smoothly to zero within three intervals outside.
 * Function i + (a.intervals + 3) j is the i-th along a times the j-th along b.
 */
export function splineBasis(a: Stretch, b: Stretch): Basis {
  const countA = a.intervals + 3;
  const countB = b.intervals + 3;
  const alongA = new Float64Array(countA);
  return {
    count: countA * countB,
    fill(out, offset, atA, atB, da, db) {
      for (let i = 0; i < countA; i++) alongA[i] = bump(a, i, atA, da);
      for (let j = 0; j < countB; j++) {
        const factor = bump(b, j, atB, db);
        const row = offset + countA * j;
        for (let i = 0; i < countA; i++) out[row + i] = factor * alongA[i]!;
      }
    },
  };
}

/** The i-th B-spline of a stretch, centred i − 1 intervals from its start, or its derivative of the given order. */
function bump({ from, to, intervals }: Stretch, i: number, x: number, order: number): number {
  const width = (to - from) / intervals;
  return cubicBump((x - from) / width - (i - 1), order) / width ** order;
}

/** Cardinal cubic B-spline about 0 with support [−2, 2], or its derivative of the given order. */
function cubicBump(t: number, order: number): number {
  const s = Math.abs(t);
  if (s >= 2) return 0;
  const sign = t < 0 ? -1 : 1;
  const r = 2 - s;
  switch (order) {
    case 0:
      return s < 1 ? 2 / 3 - s * s + (s * s * s) / 2 : (r * r * r) / 6;
    case 1:
      return sign * (s < 1 ? -2 * s + 1.5 * s * s : -(r * r) / 2);
    case 2:
      return s < 1 ? -2 + 3 * s : r;
    default:
      return sign * (s < 1 ? 3 : -1);
  }
}

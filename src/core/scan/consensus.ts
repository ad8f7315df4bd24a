import type { Field } from './field';

const TRIALS = 300;
/** A point agrees with a plane within this, mm. */
const AGREES = 8;
/** Corners of a trial's triangle are at least this far from a line, mm². */
const LEAST_AREA = 2e4;

/**
 * The plane h(a, b) that most points agree with (random sample consensus; Fischler and Bolles 1981), those that lie
 * behind it counted against it: what hangs on a wall stands before it, and nothing stands behind.
 * @param behind +1 where growing h lies behind the wall, −1 where it lies before it
 * @param random in [0, 1)
 */
export function consensusPlane(
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  h: ArrayLike<number>,
  behind: 1 | -1,
  random: () => number,
): Field | null {
  const n = h.length;
  if (n < 20) return null;
  let best: { score: number; field: Field } | null = null;
  for (let trial = 0; trial < TRIALS; trial++) {
    const [i, j, k] = [0, 0, 0].map(() => Math.floor(random() * n)) as [number, number, number];
    const [a1, b1, a2, b2] = [a[j]! - a[i]!, b[j]! - b[i]!, a[k]! - a[i]!, b[k]! - b[i]!];
    const area = a1 * b2 - a2 * b1;
    if (Math.abs(area) < LEAST_AREA) continue;
    const [h1, h2] = [h[j]! - h[i]!, h[k]! - h[i]!];
    const slopeA = (h1 * b2 - h2 * b1) / area;
    const slopeB = (h2 * a1 - h1 * a2) / area;
    if (Math.abs(slopeA) > 0.15 || Math.abs(slopeB) > 0.15) continue;
    const level = h[i]! - slopeA * a[i]! - slopeB * b[i]!;
    let score = 0;
    for (let p = 0; p < n; p++) {
      const off = behind * (h[p]! - level - slopeA * a[p]! - slopeB * b[p]!);
      if (off > AGREES) score -= off > 3 * AGREES ? 1 : 0;
      else if (off > -AGREES) score += 1;
    }
    if (score > (best?.score ?? 0)) best = { score, field: Float64Array.of(level * 1e-3, slopeA, slopeB, 0, 0, 0) };
  }
  return best?.field ?? null;
}

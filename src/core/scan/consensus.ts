import type { Field } from './field';
import { fewerHeights, type Heights } from './heights';

/** No more trials than this; fewer where so many points agree that another would hardly find a better plane. */
const MOST_TRIALS = 300;
/** Chance that is left of never having drawn three points that agree. */
const MISSED = 1e-6;
/** Planes are judged on so many points. */
const JUDGES = 1500;
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
export function consensusPlane(heights: Heights, behind: 1 | -1, random: () => number): Field | null {
  const { count, a, b, h } = fewerHeights(heights, JUDGES);
  if (count < 20) return null;
  let best: { score: number; field: Field } | null = null;
  let trials = MOST_TRIALS;
  for (let trial = 0; trial < trials; trial++) {
    const i = Math.floor(random() * count);
    const j = Math.floor(random() * count);
    const k = Math.floor(random() * count);
    const [a1, b1, a2, b2] = [a[j]! - a[i]!, b[j]! - b[i]!, a[k]! - a[i]!, b[k]! - b[i]!];
    const area = a1 * b2 - a2 * b1;
    if (Math.abs(area) < LEAST_AREA) continue;
    const [h1, h2] = [h[j]! - h[i]!, h[k]! - h[i]!];
    const slopeA = (h1 * b2 - h2 * b1) / area;
    const slopeB = (h2 * a1 - h1 * a2) / area;
    if (Math.abs(slopeA) > 0.15 || Math.abs(slopeB) > 0.15) continue;
    const level = h[i]! - slopeA * a[i]! - slopeB * b[i]!;
    let agree = 0;
    let against = 0;
    for (let p = 0; p < count; p++) {
      const off = behind * (h[p]! - level - slopeA * a[p]! - slopeB * b[p]!);
      if (off > AGREES) against += off > 3 * AGREES ? 1 : 0;
      else if (off > -AGREES) agree += 1;
    }
    const score = agree - against;
    if (score <= (best?.score ?? 0)) continue;
    best = { score, field: Float64Array.of(level * 1e-3, slopeA, slopeB, 0, 0, 0) };
    trials = Math.min(MOST_TRIALS, trialsFor(agree / count));
  }
  return best?.field ?? null;
}

/** Trials that draw three of the points that agree with all but the chance MISSED; half of the triangles are too narrow. */
const trialsFor = (share: number): number =>
  Math.ceil((2 * Math.log(MISSED)) / Math.log(1 - Math.min(0.999, share) ** 3));

import type { Point } from '../panel';
import { extent, spaced } from '../range';

/** First and last strip of tape from the piece's ends, mm (common practice, no source). */
const FROM_END = 60;

/** Places along a piece for tape that holds it while its adhesive cures: near both ends and evenly between. */
export function tapePlaces(outline: readonly Point[], axis: 'x' | 'y', spacing: number): number[] {
  const [from, to] = extent(outline, axis === 'x' ? 0 : 1);
  const inset = Math.min(FROM_END, (to - from) / 4);
  const intervals = Math.max(1, Math.ceil((to - from - 2 * inset) / spacing));
  return spaced(from + inset, to - inset, intervals + 1);
}

import type { Point } from '../panel';
import { extent } from '../piece';

/** First and last strip of tape from the piece's ends, mm (common practice, no source). */
const FROM_END = 60;

/** Places along a piece for tape that holds it while its adhesive cures: near both ends and evenly between. */
export function tapePlaces(outline: readonly Point[], axis: 'x' | 'y', spacing: number): number[] {
  const [from, to] = extent(outline, axis === 'x' ? 0 : 1);
  const inset = Math.min(FROM_END, (to - from) / 4);
  const run = to - from - 2 * inset;
  const intervals = Math.max(1, Math.ceil(run / spacing));
  return Array.from({ length: intervals + 1 }, (_, k) => from + inset + (run * k) / intervals);
}

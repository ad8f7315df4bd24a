/** The golden ratio's fraction: its multiples fall evenly on a stretch and keep no rhythm. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Indices of at most `most` of so many, rising: one out of each run of equal length, where in it by the golden ratio, so
 * that what repeats in them, as the rows of a grid, does not show.
 */
export function evenlyAmong(count: number, most: number): Int32Array {
  if (count <= most) return Int32Array.from({ length: count }, (_, k) => k);
  return Int32Array.from({ length: most }, (_, k) => ((k + ((k * GOLDEN) % 1)) * count) / most);
}

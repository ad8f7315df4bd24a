/**
 * Median of values counted in bins, in bins' widths; those within a bin are taken to lie evenly in it.
 * @param total of all values counted
 * @param from the first of so many bins
 */
export function medianOfBins(counts: ArrayLike<number>, total: number, from = 0, bins = counts.length): number {
  let below = 0;
  for (let k = 0; k < bins; k++) {
    const n = counts[from + k]!;
    if (n > 0 && below + n >= total / 2) return k + (total / 2 - below) / n;
    below += n;
  }
  return 0;
}

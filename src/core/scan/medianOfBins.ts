/** Median of values counted in bins, in bins' widths; those within a bin are taken to lie evenly in it. */
export function medianOfBins(bins: ArrayLike<number>, total: number): number {
  let below = 0;
  for (let k = 0; k < bins.length; k++) {
    const n = bins[k]!;
    if (n > 0 && below + n >= total / 2) return k + (total / 2 - below) / n;
    below += n;
  }
  return 0;
}

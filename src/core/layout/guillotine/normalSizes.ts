/** Something that may be cut from a rectangle again and again, in whole units of length. */
export interface Extent {
  size: number;
  /** how many there are at most */
  most: number;
}

/**
 * Lengths that pieces laid side by side can reach without a gap, 0 included, ascending: a guillotine cut can be moved to
 * one of them without loss (Herz, Recursive computational procedure for two-dimensional stock cutting, 1972).
 */
export function normalSizes(extents: readonly Extent[], limit: number): number[] {
  const reached = new Set([0]);
  for (const { size, most } of extents) {
    if (size <= 0) continue;
    for (const start of [...reached]) {
      for (let count = 1; count <= most && start + count * size <= limit; count++) reached.add(start + count * size);
    }
  }
  return [...reached].sort((a, b) => a - b);
}

/** Index of the largest entry that is at most `size`; the list starts with 0. */
export function floorIndex(sizes: readonly number[], size: number): number {
  let low = 0;
  let high = sizes.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (sizes[middle]! <= size) low = middle;
    else high = middle - 1;
  }
  return low;
}

import { floorIndex, normalSizes } from './normalSizes';

/** A kind of rectangle to cut; sizes in whole units. */
export interface RectangleKind {
  width: number;
  height: number;
  value: number;
}

/** Greatest value of every rectangle that normal sizes span. */
export interface ValueTable {
  widths: number[];
  heights: number[];
  /** value[i][j] of a rectangle widths[i] × heights[j] */
  value: Float64Array[];
  /** value of a rectangle of any size within the stock */
  at(width: number, height: number): number;
}

/**
 * Greatest total value that guillotine cuts get from a rectangle and from every smaller one, each kind in fixed
 * orientation and as often as it fits: the recursion of Gilmore and Gomory (The theory and computation of knapsack
 * functions, 1966) over normal sizes. Exact.
 */
export function unconstrainedGuillotine(
  kinds: readonly RectangleKind[],
  width: number,
  height: number,
  most: readonly number[] = kinds.map(() => Number.POSITIVE_INFINITY),
): ValueTable {
  const widths = normalSizes(
    kinds.map((kind, k) => ({ size: kind.width, most: most[k]! })),
    width,
  );
  const heights = normalSizes(
    kinds.map((kind, k) => ({ size: kind.height, most: most[k]! })),
    height,
  );
  const value = widths.map(() => new Float64Array(heights.length));
  for (let i = 0; i < widths.length; i++) {
    for (let j = 0; j < heights.length; j++) {
      let best = 0;
      for (const kind of kinds) {
        if (kind.width <= widths[i]! && kind.height <= heights[j]! && kind.value > best) best = kind.value;
      }
      for (let a = 1; a < i && 2 * widths[a]! <= widths[i]!; a++) {
        best = Math.max(best, value[a]![j]! + value[floorIndex(widths, widths[i]! - widths[a]!)]![j]!);
      }
      for (let b = 1; b < j && 2 * heights[b]! <= heights[j]!; b++) {
        best = Math.max(best, value[i]![b]! + value[i]![floorIndex(heights, heights[j]! - heights[b]!)]!);
      }
      value[i]![j] = best;
    }
  }
  return {
    widths,
    heights,
    value,
    at: (w, h) => value[floorIndex(widths, w)]![floorIndex(heights, h)]!,
  };
}

import { floorIndex } from './normalSizes';
import type { ValueTable } from './unconstrained';

/**
 * Greatest value that the rest of the stock can add to a rectangle in its corner, as a function of that rectangle's size:
 * the rest is cut away in strips alternately beside and above it, and each strip is worth at most its unconstrained value.
 */
export function outsideBound(table: ValueTable, width: number, height: number): (w: number, h: number) => number {
  // Sizes that remain, so that the rectangle itself may have any size: rest[i][j] for width − w ≥ widths[i].
  const { widths, heights } = table;
  const rest = widths.map(() => new Float64Array(heights.length));
  for (let i = 0; i < widths.length; i++) {
    for (let j = 0; j < heights.length; j++) {
      let best = 0;
      for (let a = 1; a <= i; a++) {
        const strip = table.at(widths[a]!, height - heights[j]!);
        best = Math.max(best, strip + rest[floorIndex(widths, widths[i]! - widths[a]!)]![j]!);
      }
      for (let b = 1; b <= j; b++) {
        const strip = table.at(width - widths[i]!, heights[b]!);
        best = Math.max(best, strip + rest[i]![floorIndex(heights, heights[j]! - heights[b]!)]!);
      }
      rest[i]![j] = best;
    }
  }
  return (w, h) => rest[floorIndex(widths, width - w)]![floorIndex(heights, height - h)]!;
}

import type { Point } from '../../core';

/** Where a closed outline crosses a line on which one coordinate (`axis`) is `value`: the other coordinate there. */
export function crossings(outline: readonly Point[], axis: 0 | 1, value: number): number[] {
  const other = axis === 0 ? 1 : 0;
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    if (a[axis] <= value === b[axis] <= value) return [];
    const share = (value - a[axis]) / (b[axis] - a[axis]);
    return [a[other] + share * (b[other] - a[other])];
  });
}

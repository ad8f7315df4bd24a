import type { Point } from '../panel';
import { extent } from '../range';

/** The same polygon the other way round where it runs clockwise. */
export function counterClockwise(polygon: readonly Point[]): Point[] {
  return turnsLeft(polygon) ? [...polygon] : [...polygon].reverse();
}

function turnsLeft(polygon: readonly Point[]): boolean {
  let twice = 0;
  polygon.forEach(([x, y], i) => {
    const [nextX, nextY] = polygon[(i + 1) % polygon.length]!;
    twice += x * nextY - nextX * y;
  });
  return twice > 0;
}

/** Smallest rectangle, along and across, around loops. */
export function blankSize(loops: readonly (readonly Point[])[], axis: 'x' | 'y'): { along: number; across: number } {
  const points = loops.flat();
  const [x0, x1] = extent(points, 0);
  const [y0, y1] = extent(points, 1);
  return axis === 'x' ? { along: x1 - x0, across: y1 - y0 } : { along: y1 - y0, across: x1 - x0 };
}

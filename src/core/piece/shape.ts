import { type Point, polygonArea } from '../panel';
import { extent } from '../range';

/** The same polygon the other way round where it runs clockwise. */
export function counterClockwise(polygon: readonly Point[]): Point[] {
  return polygonArea(polygon) > 0 ? [...polygon] : [...polygon].reverse();
}

/** Smallest rectangle, along and across, around loops. */
export function blankSize(loops: readonly (readonly Point[])[], axis: 'x' | 'y'): { along: number; across: number } {
  const points = loops.flat();
  const [x0, x1] = extent(points, 0);
  const [y0, y1] = extent(points, 1);
  return axis === 'x' ? { along: x1 - x0, across: y1 - y0 } : { along: y1 - y0, across: x1 - x0 };
}

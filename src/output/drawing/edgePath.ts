import type { EdgeName, Point } from '../../core';

/** Edges that a counter-clockwise outline runs along in the direction of their marks. */
const withOutline: ReadonlySet<EdgeName> = new Set<EdgeName>(['bottom', 'right', 'front']);

/**
 * The stretch of a counter-clockwise outline that belongs to an edge, between its first and its last mark.
 * @param outline mm, not closed
 * @returns from the first mark to the last one
 */
export function edgePath(outline: Point[], edge: EdgeName, first: Point, last: Point): Point[] {
  const from = nearest(outline, first);
  const to = nearest(outline, last);
  const step = withOutline.has(edge) ? 1 : -1;
  const path: Point[] = [first];
  for (let i = from; i !== to; i = (i + step + outline.length) % outline.length) {
    if (i !== from) path.push(outline[i]!);
  }
  path.push(last);
  return path;
}

function nearest(points: Point[], target: Point): number {
  let best = 0;
  let least = Infinity;
  points.forEach((point, i) => {
    const distance = Math.hypot(point[0] - target[0], point[1] - target[1]);
    if (distance < least) {
      least = distance;
      best = i;
    }
  });
  return best;
}

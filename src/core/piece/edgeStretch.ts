import type { Point } from '../panel';

/**
 * The stretch of a closed outline that belongs to an edge: between the corners nearest to its first and its last mark,
 * the way round that passes its own marks and no other edge's, else the shorter one.
 * @param marks of the edge, in order along it; at least one
 * @param others marks of the other edges
 * @returns corners of the outline from the first mark's to the last one's
 */
export function edgeStretch(
  outline: readonly Point[],
  marks: readonly Point[],
  others: readonly Point[] = [],
): Point[] {
  const [from, to] = [nearest(outline, marks[0]!), nearest(outline, marks.at(-1)!)];
  const own = marks.map((mark) => nearest(outline, mark));
  const foreign = others.map((mark) => nearest(outline, mark));
  const ways = ([1, -1] as const).map((step) => {
    const corners = [from];
    for (let i = from; i !== to; ) {
      i = (i + step + outline.length) % outline.length;
      corners.push(i);
    }
    const inside = new Set(corners.slice(1, -1));
    const passed = (all: number[]): number => new Set(all.filter((i) => inside.has(i))).size;
    const path = corners.map((i) => outline[i]!);
    return { path, worth: passed(own) - passed(foreign), long: lengthOf(path) };
  });
  const [one, other] = ways as [(typeof ways)[0], (typeof ways)[0]];
  if (one.worth !== other.worth) return one.worth > other.worth ? one.path : other.path;
  return one.long <= other.long ? one.path : other.path;
}

const lengthOf = (path: readonly Point[]): number =>
  path.reduce((sum, [x, y], i) => (i === 0 ? 0 : sum + Math.hypot(x - path[i - 1]![0], y - path[i - 1]![1])), 0);

function nearest(points: readonly Point[], [x, y]: Point): number {
  let best = 0;
  points.forEach(([px, py], i) => {
    if (Math.hypot(px - x, py - y) < Math.hypot(points[best]![0] - x, points[best]![1] - y)) best = i;
  });
  return best;
}

import type { Point } from '../../core';

export interface Path {
  points: Point[];
  closed: boolean;
}

/** Ends that lie this close are one, mm. */
const SAME = 0.01;

/** Closed polygons, the first point not repeated: closed paths as they are, open ones joined end to end. */
export function closedLoops(paths: readonly Path[]): Point[][] {
  const loops = paths.filter(({ closed }) => closed).map(({ points }) => withoutRepeat(points));
  const open = paths.filter(({ closed }) => !closed).map(({ points }) => [...points]);
  for (let chain = open.pop(); chain; chain = open.pop()) {
    for (;;) {
      const end = chain.at(-1)!;
      const next = open.findIndex((points) => same(points[0]!, end) || same(points.at(-1)!, end));
      if (next < 0) break;
      const [points] = open.splice(next, 1) as [Point[]];
      chain.push(...(same(points[0]!, end) ? points : points.reverse()).slice(1));
    }
    if (chain.length > 3 && same(chain[0]!, chain.at(-1)!)) loops.push(withoutRepeat(chain));
  }
  return loops;
}

const same = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.hypot(ax - bx, ay - by) <= SAME;

const withoutRepeat = (points: Point[]): Point[] =>
  points.length > 1 && same(points[0]!, points.at(-1)!) ? points.slice(0, -1) : points;

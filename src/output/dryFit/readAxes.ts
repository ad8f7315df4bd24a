import type { Point } from '../../core';
import type { Path } from './closedLoops';
import { Unreadable } from './unreadable';

/** From the drawing's coordinates to flat ones, by the L on the layer of the axes and the figures beside it. */
export function axesOf(paths: readonly Path[], texts: readonly string[]): (point: Point) => Point {
  const figures = texts.map((text) => /^\s*(-?[\d.]+)\s+(-?[\d.]+)\s*$/.exec(text)).find((match) => match !== null);
  const [along, corner, up] = strokesOf(paths);
  if (!figures || !along || !corner || !up) {
    throw new Unreadable('its layer "axes" lacks the L and the two figures that tell how it lies');
  }
  const [x, y] = [unitFrom(corner, along), unitFrom(corner, up)];
  const at: Point = [Number(figures[1]), Number(figures[2])];
  return ([px, py]) => {
    const [dx, dy] = [px - corner[0], py - corner[1]];
    return [at[0] + dx * x[0] + dy * x[1], at[1] + dx * y[0] + dy * y[1]];
  };
}

/** The L's three points, the end of its longer stroke first, be it one line or two. */
function strokesOf(paths: readonly Path[]): Point[] {
  const [path] = paths;
  if (path?.points.length === 3) {
    const [a, corner, b] = path.points as [Point, Point, Point];
    return apart(a, corner) >= apart(b, corner) ? [a, corner, b] : [b, corner, a];
  }
  if (paths.length !== 2 || paths.some(({ points }) => points.length !== 2)) return [];
  const [long, short] = [...paths].sort(
    (a, b) => apart(b.points[0]!, b.points[1]!) - apart(a.points[0]!, a.points[1]!),
  );
  const corner = long!.points.find((point) => short!.points.some((other) => apart(point, other) < SAME));
  const far = (points: Point[]): Point | undefined => points.find((point) => corner && apart(point, corner) >= SAME);
  const [along, up] = [far(long!.points), far(short!.points)];
  return corner && along && up ? [along, corner, up] : [];
}

const SAME = 0.01;
const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);

function unitFrom([ax, ay]: Point, [bx, by]: Point): Point {
  const long = Math.hypot(bx - ax, by - ay);
  return [(bx - ax) / long, (by - ay) / long];
}

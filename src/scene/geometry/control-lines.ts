import { spaced } from '../../core';
import type { Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';

export interface ControlLine {
  name: 'level line' | 'plumb line';
  points: Vec3[];
}

const pointsDrawn = 24;
/** Lines lie this far off the wall, in mm, so that they show. */
const off = 2;

/** The level line around the three walls and the plumb line down the back wall. */
export function controlLines(shape: AlcoveShape, place: (point: Vec3) => Vec3): ControlLine[] {
  const { back, corner, front, side, bottom, top } = shape;
  const [left, right] = [corner.left(0), corner.right(0)];
  const along = (from: number, to: number, point: (t: number) => Vec3) => spaced(from, to, pointsDrawn).map(point);
  const level = [
    ...along(front.left(0), back(left, 0), (z) => [side.left(0, z) + off, 0, z]),
    ...along(left, right, (x) => [x, 0, back(x, 0) + off]),
    ...along(back(right, 0), front.right(0), (z) => [side.right(0, z) - off, 0, z]),
  ];
  const plumb = along(bottom, top, (y) => [0, y, back(0, y) + off]);
  return [
    { name: 'level line', points: level.map(place) },
    { name: 'plumb line', points: plumb.map(place) },
  ];
}

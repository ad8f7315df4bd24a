import type { Side, WallName } from '../../src/core/job-file';
import { bisect } from './bisect';
import { frontAt, type TrueAlcove, wallAt } from './trueAlcove';

export type Point3 = [x: number, y: number, z: number];

export const distance3 = (p: Point3, q: Point3): number => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);

/** The point of a wall at a station. */
export function onWall(alcove: TrueAlcove, wall: WallName, at: number, height: number): Point3 {
  const field = wallAt(alcove, wall, at, height);
  return wall === 'back' ? [at, height, field] : [field, height, at];
}

/** Where back and side wall meet at a height. */
export function cornerPoint(alcove: TrueAlcove, side: Side, height: number): Point3 {
  const near = wallAt(alcove, side, 0, height);
  const x = bisect((x) => x - wallAt(alcove, side, wallAt(alcove, 'back', x, height), height), near - 300, near + 300);
  return onWall(alcove, 'back', x, height);
}

export const frontPoint = (alcove: TrueAlcove, side: Side, height: number): Point3 =>
  onWall(alcove, side, frontAt(alcove, side, height), height);

/** The point of a wall at a straight distance from a corner, in the level section through it. */
export function awayFromCorner(
  alcove: TrueAlcove,
  side: Side,
  wall: 'back' | Side,
  height: number,
  away: number,
): Point3 {
  const corner = cornerPoint(alcove, side, height);
  const towards = wall === 'back' ? (side === 'left' ? 1 : -1) : 1;
  const start = wall === 'back' ? corner[0] : corner[2];
  const step = bisect(
    (step) => distance3(corner, onWall(alcove, wall, start + towards * step, height)) - away,
    away / 2,
    away + 1e-6,
  );
  return onWall(alcove, wall, start + towards * step, height);
}

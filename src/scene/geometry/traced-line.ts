import type { Result, WallName } from '../../core';
import { exaggerated } from './exaggerate';
import type { Vec3 } from './mesh-data';
import { alcoveShape } from './shape';
import { onWall } from './wall-place';

/** A place on a wall, mm; `at` is x on the back wall and the distance out from the back on a side wall. */
export interface WallPlace {
  wall: WallName;
  at: number;
  height: number;
}

/** The line lies this far off the wall, mm, so that it shows. */
const OFF = 4;

/** Straight from place to place, in an alcove drawn `factor` times further out of true than it is. */
export function tracedLine(result: Result, places: readonly WallPlace[], factor: number): Vec3[] {
  const shape = alcoveShape(result);
  const place = exaggerated(shape, factor);
  return places.map(({ wall, at, height }) => place(onWall(shape, wall, OFF)(at, height)));
}

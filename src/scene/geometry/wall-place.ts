import type { WallName } from '../../core';
import type { Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';

/** The point `off` mm into the room from a wall's face at wall coordinates (u, v). */
export function onWall(shape: AlcoveShape, wall: WallName, off: number): (u: number, v: number) => Vec3 {
  switch (wall) {
    case 'back':
      return (u, v) => [u, v, shape.back(u, v) + off];
    case 'left':
      return (u, v) => [shape.side.left(v, u) + off, v, u];
    case 'right':
      return (u, v) => [shape.side.right(v, u) - off, v, u];
  }
}

/** The direction in the alcove's frame of growing u along a wall. */
export const alongU = (wall: WallName): Vec3 => (wall === 'back' ? [1, 0, 0] : [0, 0, 1]);

/** The direction from a wall into the room. */
export const intoRoom = (wall: WallName): Vec3 =>
  wall === 'back' ? [0, 0, 1] : wall === 'left' ? [1, 0, 0] : [-1, 0, 0];

export const moved = (point: Vec3, direction: Vec3, by: number): Vec3 => [
  point[0] + direction[0] * by,
  point[1] + direction[1] * by,
  point[2] + direction[2] * by,
];

import Module, { type Manifold } from 'manifold-3d';
import type { Point, WallName } from '../../src/core';
import { rimAt, type TrueAlcove, wallAt } from '../simulate';

const library = await Module();
library.setup();
const Solid = library.Manifold;

/** Facets of a curved face are at most this long, mm. */
const FACET = 60;
const FAR = 1400;

/** Plate with a flat outline and a thickness. */
export const plate = (outline: readonly Point[], thickness: number): Manifold =>
  Solid.extrude([outline.map(([u, v]): [number, number] => [u, v])], thickness);

/** Least convex solid around points. */
export const hull = (points: readonly (readonly [number, number, number])[]): Manifold =>
  Solid.hull(points.map(([x, y, z]): [number, number, number] => [x, y, z]));

/** Box from corner to corner. */
export const block = (from: [number, number, number], to: [number, number, number]): Manifold =>
  Solid.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

const shaped = (solid: Manifold, move: (point: [number, number, number]) => void): Manifold =>
  solid.refineToLength(FACET).warp((point) => move(point as [number, number, number]));

/** What stands behind a wall, 200 mm deep, its face pushed `joint` into the room. */
export function wallSolid(alcove: TrueAlcove, wall: WallName, joint = 0): Manifold {
  if (wall === 'back') {
    return shaped(block([-FAR, -FAR, -200], [FAR, FAR, joint]), (point) => {
      point[2] += wallAt(alcove, 'back', point[0], point[1]);
    });
  }
  const slab =
    wall === 'left' ? block([-200, -FAR, -100], [joint, FAR, FAR]) : block([-joint, -FAR, -100], [200, FAR, FAR]);
  return shaped(slab, (point) => {
    point[0] += wallAt(alcove, wall, point[2], point[1]);
  });
}

/** The tub or base below the rim, its top raised by `joint`. */
export const rimSolid = (alcove: TrueAlcove, joint = 0): Manifold =>
  shaped(block([-FAR, -200, -100], [FAR, joint, FAR]), (point) => {
    point[1] += rimAt(alcove, point[0], point[2]);
  });

/** A panel of an outline in wall coordinates, laid on its wall from `bed` to `bed + thickness`. */
export function panelSolid(
  alcove: TrueAlcove,
  wall: WallName,
  outline: readonly Point[],
  bed: number,
  thickness: number,
): Manifold {
  return shaped(plate(outline, thickness), (point) => {
    const [u, v, across] = point;
    const field = wallAt(alcove, wall, u, v);
    if (wall === 'back') point[2] = field + bed + across;
    else {
      point[0] = wall === 'left' ? field + bed + across : field - bed - across;
      point[2] = u;
    }
  });
}

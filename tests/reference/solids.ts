import Module, { type Manifold } from 'manifold-3d';
import type { Point, Rim, WallName } from '../../src/core';
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

type Move = (point: [number, number, number]) => void;

/** A solid in fine facets, moved point by point; where that turns it inside out it starts from its mirror image. */
function shaped(solid: Manifold, move: Move): Manifold {
  const warp = (from: Manifold, by: Move): Manifold => from.warp((point) => by(point as [number, number, number]));
  const fine = solid.refineToLength(FACET);
  const moved = warp(fine, move);
  if (moved.volume() >= 0) return moved;
  return warp(fine.mirror([1, 0, 0]), (point) => {
    point[0] = -point[0];
    move(point);
  });
}

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

/** The tub or base with its rim's contour and its apron, down to 900 mm below the rim. */
export function tubSolid(alcove: TrueAlcove, { profile, apron, width }: Rim): Manifold {
  const roll = profile.map(([outward, rise]): Point => [width - profile.at(-1)![0] + outward, rise]);
  const edge = roll.at(-1) ?? [width, 0];
  const face = apron.map(([outward, rise]): Point => [width + outward, rise]);
  const foot = face.at(-1) ?? edge;
  const section: Point[] = [
    [-100, -900],
    [foot[0], -900],
    ...face.reverse(),
    ...(roll.length > 0 ? roll.reverse() : [edge]),
    [-100, 0],
  ];
  return shaped(plate(section, 2 * FAR), (point) => {
    const [z, rise, x] = [point[0], point[1], point[2] - FAR];
    [point[0], point[1], point[2]] = [x, rimAt(alcove, x, z) + rise, z];
  });
}

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

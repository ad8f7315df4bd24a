import { type Alcove, towardsRoom } from '../alcove';
import { add, constant, type Dual, fixedPoint, larger, shift, smaller } from '../dual';
import type { Rim, Side, WallName } from '../job-file';
import { contourRise } from './contour';

/** Position of an edge at a place along it, wall coordinates, mm. */
export type EdgeAt = (along: number) => Dual;

/*
 * A board on a wall stands between two distances off it (`faces`, mm, level towards the room). Its edges are cut square
 * through the thickness, so each clears what it meets at the tighter of the board's faces.
 */

/**
 * End of a board on the back wall at a side wall: u at each height, `clearance` mm off the side wall.
 * @param back what the board's faces stand off
 */
export function besideWall(
  alcove: Alcove,
  side: Side,
  faces: readonly number[],
  clearance: number,
  back = alcove.back,
): EdgeAt {
  const inward = towardsRoom(side);
  const tighter = side === 'left' ? larger : smaller;
  return (height) => {
    const v = constant(height);
    const start = alcove[side].value(0, height);
    return faces
      .map((face) =>
        fixedPoint((u) => shift(alcove[side].at(shift(back.at(u, v), face), v), inward * clearance), start),
      )
      .reduce(tighter);
  };
}

/** End of a board on a side wall at the back wall: u at each height, `clearance` mm off the back wall. */
export function againstBack(alcove: Alcove, side: Side, faces: readonly number[], clearance: number): EdgeAt {
  const inward = towardsRoom(side);
  return (height) => {
    const v = constant(height);
    return faces
      .map((face) =>
        fixedPoint((z) => shift(alcove.back.at(shift(alcove[side].at(z, v), inward * face), v), clearance), 0),
      )
      .reduce(larger);
  };
}

/** Lower edge of a board over the rim and its contour: v at each u, `clearance` mm up. */
export function overRim(alcove: Alcove, rim: Rim, wall: WallName, faces: readonly number[], clearance: number): EdgeAt {
  return (along) => {
    const u = constant(along);
    return faces
      .map((face) => {
        const rimUnder = (v: Dual): Dual => {
          if (wall !== 'back') {
            const x = shift(alcove[wall].at(u, v), towardsRoom(wall) * face);
            return add(alcove.rim.at(x, u), contourRise(rim, u));
          }
          const z = shift(alcove.back.at(u, v), face);
          return add(alcove.rim.at(u, z), contourRise(rim, z));
        };
        const start = wall === 'back' ? alcove.rim.value(along, 0) : alcove.rim.value(0, along);
        return fixedPoint((v) => shift(rimUnder(v), clearance), start);
      })
      .reduce(larger);
  };
}

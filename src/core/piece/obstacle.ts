import type { Alcove, Place } from '../alcove';
import { add, constant, type Dual, fixedPoint, negate, shift, subtract } from '../dual';
import type { Rim, Side, WallName } from '../job-file';
import { contourRise } from '../panel';
import type { WallStrip } from './wallStrip';

/** How far a place is clear of something, mm; at 0 it touches. */
export type Obstacle = (place: Place) => Dual;

/** A side wall with whatever stands `thickness` mm off it, level. */
export const offSide =
  (alcove: Alcove, side: Side, thickness: number): Obstacle =>
  ({ x, y, z }) => {
    const face = subtract(x, alcove[side].at(z, y));
    return shift(side === 'left' ? face : negate(face), -thickness);
  };

/** The back wall with whatever stands `thickness` mm off it, level. */
export const offBack =
  (alcove: Alcove, thickness: number): Obstacle =>
  ({ x, y, z }) =>
    shift(subtract(z, alcove.back.at(x, y)), -thickness);

/** The rim with its contour, and `clearance` mm over it. */
export const overRimBy =
  (alcove: Alcove, rim: Rim, clearance: number): Obstacle =>
  ({ x, y, z }) =>
    shift(subtract(y, add(alcove.rim.at(x, z), contourRise(rim, z))), -clearance);

/**
 * Where a strip, cut square through its thickness, must end to clear an obstacle: the coordinate that runs towards it,
 * at a fixed other one. Walls slope little, so stepping back by the clearance settles fast.
 * @param depths distances w out of the strip's back at which it must clear
 * @param free +1 where growing u (or v) leads away from the obstacle
 */
export function endOfStrip(
  strip: Pick<WallStrip, 'place'>,
  runs: 'u' | 'v',
  at: number,
  depths: readonly number[],
  obstacle: Obstacle,
  free: 1 | -1,
  start: number,
): Dual {
  const fixed = constant(at);
  return depths
    .map((w) =>
      fixedPoint((moving) => {
        const place = runs === 'u' ? strip.place(moving, fixed, w) : strip.place(fixed, moving, w);
        const clear = obstacle(place);
        return free === 1 ? subtract(moving, clear) : add(moving, clear);
      }, start),
    )
    .reduce((a, b) => (free * (b.value - a.value) > 0 ? b : a));
}

/** What a distance square to a wall measures level: times this (the secant of the angle between the two). */
export const levelOverSquare = (alcove: Alcove, wall: WallName, u: number, v: number): number =>
  Math.hypot(1, ...alcove[wall].gradient(u, v));

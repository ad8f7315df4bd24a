import { type Alcove, towardsRoom } from '../alcove';
import { constant } from '../dual';
import type { Rim, Side, WallName } from '../job-file';
import { contourRise } from '../panel';
import type { Vec3 } from '../piece';

/** A straight stretch of an edge, folded up, at the piece's back. */
export interface Segment {
  middle: Vec3;
  /** true where it runs along rather than up the piece's wall */
  level: boolean;
}

/**
 * What an edge must clear. `clear`: how far a point of the edge, w out of the piece's back, stands off beyond the joint,
 * level or upright, mm; less than 0 where it reaches into the joint.
 */
export interface EdgeRule {
  clear(point: Vec3, w: number, segment: Segment): number;
  /** depths w at which a square cut must clear it: the tightest of them counts */
  depths: readonly number[];
  /** true where only the ends of the edge's longest straight are cut to fit, the rest being told as a gap for sealant */
  endsOnly?: boolean;
}

/** Level distance in front of a wall. */
export function offWall(alcove: Alcove, wall: WallName, [x, y, z]: Vec3): number {
  return wall === 'back' ? z - alcove.back.value(x, y) : towardsRoom(wall) * (x - alcove[wall].value(z, y));
}

/** Height over the rim with its contour. */
export const overRimAt = (alcove: Alcove, rim: Rim, [x, y, z]: Vec3): number =>
  y - alcove.rim.value(x, z) - contourRise(rim, constant(z)).value;

/** Level distance behind a side wall's front edge. */
export const behindFront = (alcove: Alcove, side: Side, [, y, z]: Vec3): number => alcove.front[side].value(0, y) - z;

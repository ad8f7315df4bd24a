import type { Side, WallName } from '../../src/core/job-file';

/** Coefficients of x = c + y·y + z·z + yz·yz + yy·y² + zz·z², mm. */
export interface TrueSide {
  c: number;
  y: number;
  z: number;
  yz: number;
  yy: number;
  zz: number;
}

/** A swelling of a wall: rise·exp(−r²/2radius²) towards the room about a station, mm; a hollow has a negative rise. */
export interface Hump {
  wall: WallName;
  at: number;
  height: number;
  rise: number;
  radius: number;
}

/** An alcove known exactly, in the frame of the control lines, mm. */
export interface TrueAlcove {
  /** z = y·y + xy·xy + xx·x² + yy·y² */
  back: { y: number; xy: number; xx: number; yy: number };
  left: TrueSide;
  right: TrueSide;
  /** y = c + x·x + z·z + xx·x² + zz·z² */
  rim: { c: number; x: number; z: number; xx: number; zz: number };
  /** z = f0 + f1·y */
  front: Record<Side, { f0: number; f1: number }>;
  humps: Hump[];
}

/** z of the back wall at x = `at`, or x of a side wall at z = `at`. */
export function wallAt(alcove: TrueAlcove, wall: WallName, at: number, height: number): number {
  const towardsRoom = wall === 'right' ? -1 : 1;
  const swelling = alcove.humps
    .filter((hump) => hump.wall === wall)
    .reduce((sum, hump) => sum + towardsRoom * swell(hump, at, height), 0);
  if (wall === 'back') {
    const { y, xy, xx, yy } = alcove.back;
    return y * height + xy * at * height + xx * at * at + yy * height * height + swelling;
  }
  const { c, y, z, yz, yy, zz } = alcove[wall];
  return c + y * height + z * at + yz * height * at + yy * height * height + zz * at * at + swelling;
}

/** A hump on the back wall leaves the frame in place: no height and no slope along the level line at the origin. */
function swell(hump: Hump, at: number, height: number): number {
  const bell = (a: number, h: number): number =>
    hump.rise * Math.exp(-((a - hump.at) ** 2 + (h - hump.height) ** 2) / (2 * hump.radius ** 2));
  if (hump.wall !== 'back') return bell(at, height);
  const slopeAtOrigin = (bell(0, 0) * hump.at) / hump.radius ** 2;
  return bell(at, height) - bell(0, 0) - slopeAtOrigin * at;
}

/** Height of the rim's plane at (x, z). */
export function rimAt({ rim }: TrueAlcove, x: number, z: number): number {
  return rim.c + rim.x * x + rim.z * z + rim.xx * x * x + rim.zz * z * z;
}

/** z of a side wall's front edge. */
export const frontAt = ({ front }: TrueAlcove, side: Side, height: number): number =>
  front[side].f0 + front[side].f1 * height;

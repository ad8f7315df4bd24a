import { type Alcove, type Place, towardsRoom } from '../alcove';
import { type Dual, shift } from '../dual';
import type { WallName } from '../job-file';
import type { Point } from '../panel';
import type { Frame, Station } from './piece';
import { cross, dot, length, plus, unit, type Vec3 } from './vector';

/**
 * A narrow strip laid along a wall: its reference line follows the wall (or a panel's face, `off` mm from it, level),
 * and from that line it is flat across. Bending along its length keeps lengths; across it, and for the sideways curve of
 * a level line on a leaning, bowed wall, it is taken as straight, which over a strip 300 mm wide and a bow of 10 mm/m²
 * costs less than 0.01 mm in width and 0.1 mm in straightness.
 */
export interface WallStrip {
  axis: 'x' | 'y';
  wall: WallName;
  /** wall coordinates to flat coordinates */
  toFlat(u: number, v: number): Point;
  /** the point `w` mm square out of the strip's back at wall coordinates (u, v) */
  place(u: Dual, v: Dual, w: number): Place;
  /** frames at even steps of the reference line */
  stations(from: number, to: number): Station[];
}

/** Stations a strip is given, less one, and intervals over which a length along it is summed. */
const STATIONS = 32;
const INTERVALS = 12;

/** A strip along a level line: x runs along it from u = 0, y from the height `v` up. */
export function levelStrip(alcove: Alcove, wall: WallName, off: number, v: number): WallStrip {
  const turn = wall === 'left' ? -1 : 1;
  const speed = (at: number): number => length(alongLevel(alcove, wall, at, v));
  const alongAt = (u: number): number => turn * arc(speed, 0, u, INTERVALS);
  const frameAt = (u: number): Frame => wallFrame(alcove, wall, off, u, v, 'x');
  return {
    axis: 'x',
    wall,
    place: (u, height, w) => placeOff(alcove, wall, off, u, height, w, frameAt(u.value).w),
    toFlat(u, height) {
      const { x, y } = frameAt(u);
      const up = upWall(alcove, wall, u, v);
      return [alongAt(u) + (height - v) * dot(up, x), (height - v) * dot(up, y)];
    },
    stations: (from, to) => stationsOf(from, to, turn, speed, frameAt),
  };
}

/** A strip along a line up the wall at the station `u`: y runs along it from the level line, x from the line. */
export function uprightStrip(alcove: Alcove, wall: WallName, off: number, u: number): WallStrip {
  const speed = (at: number): number => length(upWall(alcove, wall, u, at));
  const alongAt = (v: number): number => arc(speed, 0, v, INTERVALS);
  const frameAt = (v: number): Frame => wallFrame(alcove, wall, off, u, v, 'y');
  return {
    axis: 'y',
    wall,
    place: (station, v, w) => placeOff(alcove, wall, off, station, v, w, frameAt(v.value).w),
    toFlat(station, v) {
      const { x, y } = frameAt(v);
      const across = alongLevel(alcove, wall, u, v);
      return [(station - u) * dot(across, x), alongAt(v) + (station - u) * dot(across, y)];
    },
    stations: (from, to) => stationsOf(from, to, 1, speed, frameAt),
  };
}

/** The point `off` mm in front of a wall, level towards the room. */
export function pointOffWall(alcove: Alcove, wall: WallName, off: number, u: number, v: number): Vec3 {
  const height = alcove[wall].value(u, v);
  return wall === 'back' ? [u, v, height + off] : [height + towardsRoom(wall) * off, v, u];
}

function placeOff(alcove: Alcove, wall: WallName, off: number, u: Dual, v: Dual, w: number, out: Vec3): Place {
  const height = alcove[wall].at(u, v);
  const [x, y, z] = wall === 'back' ? [u, v, shift(height, off)] : [shift(height, towardsRoom(wall) * off), v, u];
  return { x: shift(x, w * out[0]), y: shift(y, w * out[1]), z: shift(z, w * out[2]) };
}

/**
 * Frame of a face on a wall: w out into the room, x to the viewer's right along the level line, or y straight up the
 * wall.
 */
function wallFrame(alcove: Alcove, wall: WallName, off: number, u: number, v: number, exact: 'x' | 'y'): Frame {
  const turn = wall === 'left' ? -1 : 1;
  const right = plus([0, 0, 0], alongLevel(alcove, wall, u, v), turn);
  const up = upWall(alcove, wall, u, v);
  const w = unit(cross(right, up));
  const origin = pointOffWall(alcove, wall, off, u, v);
  if (exact === 'x') {
    const x = unit(right);
    return { origin, x, y: cross(w, x), w };
  }
  const y = unit(up);
  return { origin, x: cross(y, w), y, w };
}

/** ∂/∂u and ∂/∂v of the wall's points. */
function alongLevel(alcove: Alcove, wall: WallName, u: number, v: number): Vec3 {
  const [slope] = alcove[wall].gradient(u, v);
  return wall === 'back' ? [1, 0, slope] : [slope, 0, 1];
}

function upWall(alcove: Alcove, wall: WallName, u: number, v: number): Vec3 {
  const [, slope] = alcove[wall].gradient(u, v);
  return wall === 'back' ? [0, 1, slope] : [slope, 1, 0];
}

/** @param turn +1 where the strip's own axis runs with the wall's coordinate, −1 where against it */
function stationsOf(
  from: number,
  to: number,
  turn: number,
  speed: (at: number) => number,
  frameAt: (at: number) => Frame,
): Station[] {
  let along = arc(speed, 0, from, INTERVALS);
  const all = Array.from({ length: STATIONS + 1 }, (_, k): Station => {
    const place = from + ((to - from) * k) / STATIONS;
    if (k > 0) along += arc(speed, from + ((to - from) * (k - 1)) / STATIONS, place, 2);
    return { at: turn * along, frame: frameAt(place) };
  });
  return turn * (to - from) > 0 ? all : all.reverse();
}

/** Composite Simpson rule over an even number of intervals. */
function arc(speed: (at: number) => number, from: number, to: number, intervals: number): number {
  const step = (to - from) / intervals;
  let sum = speed(from) + speed(to);
  for (let k = 1; k < intervals; k++) sum += (k % 2 === 0 ? 2 : 4) * speed(from + k * step);
  return (sum * step) / 3;
}

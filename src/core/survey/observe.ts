import { type Alcove, distance, insideCorner, type Place } from '../alcove';
import {
  add,
  arcTangent2,
  constant,
  type Dual,
  divide,
  fixedPoint,
  hypotenuse,
  negate,
  scale,
  subtract,
} from '../dual';
import type { Reading, ReadingKind, ReadingOf, Side, Station, WallName } from '../job-file';

/** Readings that give one observation; a plumb reading gives one per gap, see `gapFromPlane`. */
export type SingleReading = Exclude<Reading, { kind: 'plumb' }>;

type Observe = { [K in Exclude<ReadingKind, 'plumb'>]: (reading: ReadingOf<K>, alcove: Alcove) => Dual };

/** The observation equation of each kind: what the reading would be in this alcove, mm (degrees for an angle). */
const observers: Observe = {
  'tape-to-corner': ({ side, height }, alcove) =>
    distance(onWall(alcove, 'back', { at: 0, height }), insideCorner(alcove, side, height)),

  'tape-to-rim': ({ wall, at }, alcove) => {
    const { x, z } = onWall(alcove, wall, { at, height: 0 });
    return negate(alcove.rim.at(x, z));
  },

  span: ({ height, at }, alcove) =>
    subtract(onWall(alcove, 'right', { at, height }).x, onWall(alcove, 'left', { at, height }).x),

  straightedge: ({ wall, from, to }, alcove) => {
    const middle = { at: (from.at + to.at) / 2, height: (from.height + to.height) / 2 };
    const chord = scale(add(intoRoom(alcove, wall, from), intoRoom(alcove, wall, to)), 0.5);
    return subtract(chord, intoRoom(alcove, wall, middle));
  },

  square: ({ side, height, alongBack, alongSide }, alcove) => {
    const corner = insideCorner(alcove, side, height);
    return distance(alongBackWall(alcove, side, corner, alongBack), alongSideWall(alcove, side, corner, alongSide));
  },

  angle: ({ side, height }, alcove) => scale(cornerAngle(alcove, side, height), 180 / Math.PI),

  diagonal: ({ from, to }, alcove) =>
    distance(insideCorner(alcove, from.side, from.height), insideCorner(alcove, to.side, to.height)),

  depth: ({ wall, height }, alcove) => {
    const y = constant(height);
    const z = alcove.front[wall].at(constant(0), y);
    return distance(insideCorner(alcove, wall, height), { x: alcove[wall].at(z, y), y, z });
  },
};

/** What a reading of one observation would be in this alcove, mm (degrees for an angle). */
export function observe(reading: SingleReading, alcove: Alcove): Dual {
  return (observers[reading.kind] as (reading: SingleReading, alcove: Alcove) => Dual)(reading, alcove);
}

/** A gap of a plumb reading less its standoff: how far the wall stands back from the room there, mm. */
export const gapFromPlane = (wall: WallName, station: Station, alcove: Alcove): Dual =>
  negate(intoRoom(alcove, wall, station));

/**
 * Inside angle, radians, between the tangents of the back and the side wall in the level section at that height.
 * Back tangent, away from the corner: (±1, ∂b/∂x); side tangent: (∂s/∂z, 1), in (x, z).
 */
export function cornerAngle(alcove: Alcove, side: Side, height: number): Dual {
  const { x, y, z } = insideCorner(alcove, side, height);
  const inward = side === 'left' ? 1 : -1;
  const alongBack = arcTangent2(scale(alcove.back.slopeAt(x, y), inward), constant(1));
  const alongSide = arcTangent2(constant(1), scale(alcove[side].slopeAt(z, y), inward));
  return subtract(alongSide, alongBack);
}

/** Height field of a wall with its sign turned so that growing means towards the room. */
function intoRoom(alcove: Alcove, wall: WallName, { at, height }: Station): Dual {
  const field = alcove[wall].at(constant(at), constant(height));
  return wall === 'right' ? negate(field) : field;
}

function onWall(alcove: Alcove, wall: WallName, { at, height }: Station): Place {
  const y = constant(height);
  if (wall === 'back') return { x: constant(at), y, z: alcove.back.at(constant(at), y) };
  return { x: alcove[wall].at(constant(at), y), y, z: constant(at) };
}

/** The point of the back wall at a straight distance from the corner, level with it. */
function alongBackWall(alcove: Alcove, side: Side, corner: Place, away: number): Place {
  const section: Section = (x) => alcove.back.at(x, corner.y);
  const x = alongSection(section, corner.x, corner.z, side === 'left' ? away : -away);
  return { x, y: corner.y, z: section(x) };
}

/** The point of a side wall at a straight distance from the corner, level with it. */
function alongSideWall(alcove: Alcove, side: Side, corner: Place, away: number): Place {
  const section: Section = (z) => alcove[side].at(z, corner.y);
  const z = alongSection(section, corner.z, corner.x, away);
  return { x: section(z), y: corner.y, z };
}

/** A wall cut level: its height field along its station. */
type Section = (station: Dual) => Dual;

/** Station at the end of a chord of the given length from (station, field); a negative length runs backwards. */
function alongSection(section: Section, station: Dual, field: Dual, chord: number): Dual {
  return fixedPoint((end) => {
    const slope = divide(subtract(section(end), field), subtract(end, station));
    return add(station, divide(constant(chord), hypotenuse(constant(1), slope)));
  }, station.value + chord);
}

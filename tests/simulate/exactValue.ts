import type { Reading, ReadingOf, Side, WallName } from '../../src/core/job-file';
import { awayFromCorner, cornerPoint, distance3, frontPoint, onWall } from './points';
import { rimAt, type TrueAlcove, wallAt } from './trueAlcove';

type Single = Exclude<Reading, { kind: 'plumb' }>;
/** A reading still to be taken. */
export type Unread<R extends Reading = Single> = R extends Reading ? Omit<R, 'value'> : never;

/** What a reading of one value shows in the alcove: mm, degrees for an angle. */
export function exactValue(alcove: TrueAlcove, reading: Unread): number {
  switch (reading.kind) {
    case 'tape-to-corner':
      return distance3(onWall(alcove, 'back', 0, reading.height), cornerPoint(alcove, reading.side, reading.height));
    case 'tape-to-rim': {
      const [x, , z] = onWall(alcove, reading.wall, reading.at, 0);
      return -rimAt(alcove, x, z);
    }
    case 'span':
      return wallAt(alcove, 'right', reading.at, reading.height) - wallAt(alcove, 'left', reading.at, reading.height);
    case 'straightedge':
      return hollowAtMiddle(alcove, reading);
    case 'square':
      return distance3(
        awayFromCorner(alcove, reading.side, 'back', reading.height, reading.alongBack),
        awayFromCorner(alcove, reading.side, reading.side, reading.height, reading.alongSide),
      );
    case 'angle':
      return cornerDegrees(alcove, reading.side, reading.height);
    case 'diagonal':
      return distance3(
        cornerPoint(alcove, reading.from.side, reading.from.height),
        cornerPoint(alcove, reading.to.side, reading.to.height),
      );
    case 'depth':
      return distance3(
        cornerPoint(alcove, reading.wall, reading.height),
        frontPoint(alcove, reading.wall, reading.height),
      );
  }
}

/**
 * Gap from a plumb line to the wall, mm, square to the wall's nominal plane.
 * @param line x or z of the plumb line (back wall: z; side walls: x)
 */
export const gapFromLine = (alcove: TrueAlcove, wall: WallName, at: number, height: number, line: number): number =>
  wall === 'right' ? wallAt(alcove, wall, at, height) - line : line - wallAt(alcove, wall, at, height);

function hollowAtMiddle(alcove: TrueAlcove, { wall, from, to }: Unread<ReadingOf<'straightedge'>>): number {
  const ends = [from, to].map(({ at, height }) => wallAt(alcove, wall, at, height));
  const edge = (ends[0]! + ends[1]!) / 2;
  return gapFromLine(alcove, wall, (from.at + to.at) / 2, (from.height + to.height) / 2, edge);
}

/** Angle between the two level sections' tangents, each from a chord through points 1 mm to either side. */
function cornerDegrees(alcove: TrueAlcove, side: Side, height: number): number {
  const [x, , z] = cornerPoint(alcove, side, height);
  const inward = side === 'left' ? 1 : -1;
  const back = [2 * inward, wallAt(alcove, 'back', x + inward, height) - wallAt(alcove, 'back', x - inward, height)];
  const along = [wallAt(alcove, side, z + 1, height) - wallAt(alcove, side, z - 1, height), 2];
  const cosine = (back[0]! * along[0]! + back[1]! * along[1]!) / (Math.hypot(...back) * Math.hypot(...along));
  return (Math.acos(cosine) * 180) / Math.PI;
}

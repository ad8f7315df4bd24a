import { type Reading, SIDES, type WallName } from '../job-file';

const ROUND: WallName[] = ['left', 'back', 'right'];

/**
 * The order in which a person works through an alcove: from the control lines first (the drop to the rim at the plumb
 * line, which tells how far down the walls go; corners from the top down; the other drops from left to right), then
 * wall by wall the plumb lines and the straightedge, then the corners, then what needs a helper at the tape's other end (spans, diagonals), last the depths out to the front edges.
 */
export function walkingOrder<T extends { reading: Reading }>(taken: readonly T[]): T[] {
  return taken
    .map((each) => ({ each, key: keyOf(each.reading) }))
    .sort((a, b) => compare(a.key, b.key))
    .map(({ each }) => each);
}

/** A drop counts as at the plumb line within this, mm. */
const AT_PLUMB_LINE = 1;

/** Stage, wall or side, then place. */
function keyOf(reading: Reading): number[] {
  switch (reading.kind) {
    case 'tape-to-corner':
      return [0, SIDES.indexOf(reading.side), -reading.height];
    case 'tape-to-rim':
      if (reading.wall === 'back' && Math.abs(reading.at) < AT_PLUMB_LINE) return [-1];
      // Out to the front on the left wall is to the left; on the right wall, to the right.
      return [1, ROUND.indexOf(reading.wall), reading.wall === 'left' ? -reading.at : reading.at];
    case 'plumb':
      return [2, ROUND.indexOf(reading.wall), 0, reading.wall === 'left' ? -reading.at : reading.at];
    case 'straightedge': {
      const upright = reading.from.at === reading.to.at;
      return [2, ROUND.indexOf(reading.wall), upright ? 1 : 2, upright ? reading.from.at : -reading.from.height];
    }
    case 'square':
    case 'angle':
      return [3, SIDES.indexOf(reading.side), -reading.height];
    case 'span':
      return [4, 0, -reading.height, reading.at];
    case 'diagonal':
      return [4, 1, -reading.from.height];
    case 'depth':
      return [5, SIDES.indexOf(reading.wall), -reading.height];
  }
}

function compare(a: number[], b: number[]): number {
  const at = a.findIndex((entry, i) => entry !== b[i]);
  return at === -1 ? 0 : a[at]! - (b[at] ?? 0);
}

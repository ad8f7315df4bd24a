import { type Alcove, insideCorner } from '../alcove';
import type { Job, Reading, Side, WallName } from '../job-file';

/** A square check is taken with 3-4-5 legs of this unit, mm: 450, 600, 750. */
const SQUARE_UNIT = 150;
/** How far in from a corner, an edge or the rim a tape or rule can still be held, mm (common practice, no source). */
const CLEAR = 40;

/**
 * Readings that a person could take next in this alcove, every kind at the usual places: corners at five heights, drops
 * at three stations a wall, spans, square checks, diagonals, depths, plumb lines with three gaps, straightedges.
 * Values are left at 1; only places matter here.
 */
export function candidateReadings(alcove: Alcove, job: Job): Reading[] {
  const left = insideCorner(alcove, 'left', 0).x.value + CLEAR;
  const right = insideCorner(alcove, 'right', 0).x.value - CLEAR;
  const low = alcove.rim.value(0, 0) + CLEAR;
  const high = Math.max(job.fit.top, low + CLEAR);
  const heights = [low, low / 2, 0, high / 2, high];
  const ends = [low, 0, high];
  const depth = (side: Side): number => Math.max(alcove.front[side].value(0, 0) - CLEAR, 2 * CLEAR);
  const across: [number, number] = [left, right];
  const out = (side: Side): [number, number] => [CLEAR, depth(side)];
  const stations = ([from, to]: [number, number]): number[] => [from, (from + to) / 2, to];
  const rimOut = Math.min(depth('left'), depth('right'), job.rim.width - CLEAR);
  const walls: [WallName, [number, number]][] = [
    ['back', across],
    ['left', out('left')],
    ['right', out('right')],
  ];
  const sides: Side[] = ['left', 'right'];

  let count = 0;
  const id = (): string => `candidate-${++count}`;
  return [
    ...sides.flatMap((side) =>
      heights.map((height): Reading => ({ id: id(), kind: 'tape-to-corner', side, height, value: 1 })),
    ),
    ...walls.flatMap(([wall, reach]) =>
      stations(wall === 'back' ? reach : [CLEAR, rimOut]).map(
        (at): Reading => ({ id: id(), kind: 'tape-to-rim', wall, at, value: 1 }),
      ),
    ),
    ...heights.flatMap((height) =>
      [rimOut / 2, rimOut].map((at): Reading => ({ id: id(), kind: 'span', height, at, value: 1 })),
    ),
    ...sides.flatMap((side) =>
      ends.map(
        (height): Reading => ({
          id: id(),
          kind: 'square',
          side,
          height,
          alongBack: 4 * SQUARE_UNIT,
          alongSide: 3 * SQUARE_UNIT,
          value: 1,
        }),
      ),
    ),
    ...sides.flatMap((wall) => heights.map((height): Reading => ({ id: id(), kind: 'depth', wall, height, value: 1 }))),
    { id: id(), kind: 'diagonal', from: { side: 'left', height: low }, to: { side: 'right', height: high }, value: 1 },
    { id: id(), kind: 'diagonal', from: { side: 'left', height: high }, to: { side: 'right', height: low }, value: 1 },
    ...walls.flatMap(([wall, reach]) =>
      stations(reach).map(
        (at): Reading => ({ id: id(), kind: 'plumb', wall, at, gaps: ends.map((height) => ({ height, value: 1 })) }),
      ),
    ),
    ...walls.flatMap(([wall, [from, to]]) =>
      ends.map(
        (height): Reading => ({
          id: id(),
          kind: 'straightedge',
          wall,
          from: { at: from, height },
          to: { at: to, height },
          value: 1,
        }),
      ),
    ),
    ...walls.flatMap(([wall, reach]) =>
      stations(reach).map(
        (at): Reading => ({
          id: id(),
          kind: 'straightedge',
          wall,
          from: { at, height: low },
          to: { at, height: high },
          value: 1,
        }),
      ),
    ),
  ];
}

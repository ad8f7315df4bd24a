import { type Alcove, insideCorner } from '../alcove';
import { type Job, type Reading, SIDES, type Side, WALLS, type WallName } from '../job-file';
import { MM_PER_INCH } from '../length';

/** A square check is taken with 3-4-5 legs of this unit, mm: 450, 600, 750. */
const SQUARE_UNIT = 150;
/** How far in from a corner, an edge or the rim a tape or rule can still be held, mm (common practice, no source). */
const CLEAR = 40;
/** How many places a person is offered. */
export interface Density {
  /** heights at which tapes are held, from just over the rim to the panels' top */
  heights: number;
  /** stations along a wall for drops, and for plumb lines and straightedges */
  drops: number;
  lines: number;
}

/** A handful of places each way. */
export const USUAL: Density = { heights: 5, drops: 3, lines: 3 };
/** Enough that a plan can put several readings near an edge's end. */
export const FINE: Density = { heights: 9, drops: 9, lines: 5 };

/**
 * Readings that a person could take in this alcove, every kind at places on whole inches or centimetres: corners, spans
 * and depths at several heights, drops along each wall, square checks, diagonals, plumb lines of three and of five gaps,
 * straightedges. Values are left at 1; only places matter here.
 */
export function candidateReadings(alcove: Alcove, job: Job, density: Density): Reading[] {
  const step = job.display === 'in' ? MM_PER_INCH : 10;
  const handy = (mm: number): number => Number((step * Math.round(mm / step)).toFixed(6));
  const left = handy(insideCorner(alcove, 'left', 0).x.value + CLEAR);
  const right = handy(insideCorner(alcove, 'right', 0).x.value - CLEAR);
  const low = handy(alcove.rim.value(0, 0) + CLEAR);
  const high = handy(Math.max(job.fit.top - CLEAR, low + CLEAR));
  const levels = (count: number): number[] => spread([low, high], count).map(handy);
  const heights = levels(density.heights);
  const ends = levels(3);
  const out = (side: Side): number => handy(Math.max(alcove.front[side].value(0, 0) - CLEAR, 2 * CLEAR));
  const near = handy(CLEAR);
  const reach: Record<WallName, [number, number]> = {
    back: [left, right],
    left: [near, out('left')],
    right: [near, out('right')],
  };
  const rimOut = Math.min(out('left'), out('right'), handy(job.rim.width - CLEAR));
  const stations = (stretch: [number, number], count: number): number[] => spread(stretch, count).map(handy);

  let count = 0;
  const id = (): string => `candidate-${++count}`;
  return [
    ...SIDES.flatMap((side) =>
      heights.map((height): Reading => ({ id: id(), kind: 'tape-to-corner', side, height, value: 1 })),
    ),
    ...WALLS.flatMap((wall) =>
      stations(wall === 'back' ? reach.back : [near, rimOut], density.drops).map(
        (at): Reading => ({ id: id(), kind: 'tape-to-rim', wall, at, value: 1 }),
      ),
    ),
    ...heights.flatMap((height) =>
      stations([near, rimOut], 3).map((at): Reading => ({ id: id(), kind: 'span', height, at, value: 1 })),
    ),
    ...SIDES.flatMap((side) =>
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
    ...SIDES.flatMap((side) => ends.map((height): Reading => ({ id: id(), kind: 'angle', side, height, value: 90 }))),
    ...SIDES.flatMap((wall) => heights.map((height): Reading => ({ id: id(), kind: 'depth', wall, height, value: 1 }))),
    ...(
      [
        [low, high],
        [high, low],
      ] as const
    ).map(
      ([from, to]): Reading => ({
        id: id(),
        kind: 'diagonal',
        from: { side: 'left', height: from },
        to: { side: 'right', height: to },
        value: 1,
      }),
    ),
    ...WALLS.flatMap((wall) =>
      stations(reach[wall], density.lines).flatMap((at) =>
        [3, 5].map(
          (gaps): Reading => ({
            id: id(),
            kind: 'plumb',
            wall,
            at,
            gaps: levels(gaps).map((height) => ({ height, value: 1 })),
          }),
        ),
      ),
    ),
    ...WALLS.flatMap((wall) =>
      levels(density.lines).map((height): Reading => {
        const [from, to] = reach[wall];
        return { id: id(), kind: 'straightedge', wall, from: { at: from, height }, to: { at: to, height }, value: 1 };
      }),
    ),
    ...WALLS.flatMap((wall) =>
      stations(reach[wall], density.lines).map(
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

/** Places along a stretch, closer together towards its ends, where a reading says most (Chebyshev's points). */
const spread = ([from, to]: [number, number], count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * (1 - Math.cos((Math.PI * i) / (count - 1)))) / 2);

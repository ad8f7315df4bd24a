import { type Shelf, shelf } from '../job-file';

/** A usual set of corner shelves. */
export interface ShelfSet {
  /** in each corner that has any */
  count: number;
  corners: 'left' | 'right' | 'both';
  /** length along both walls, mm */
  size: number;
  front: Shelf['front'];
}

export const SHELF_COUNTS = [1, 2, 3] as const;
/** 7, 9 and 11 in, made in these sizes by habit of the trade; common practice, no source. */
export const SHELF_SIZES = [178, 229, 279] as const;

/**
 * Lowest, highest and the most between two, mm: within reach of somebody sitting and standing; common practice, no
 * source.
 */
const LOWEST = 300;
const HIGHEST = 1150;
const APART = 400;
/** Left free below the top of the panels, mm. */
const BELOW_TOP = 300;
/** Thickness, fall, gap and returns as a job file has them unless it says otherwise. */
const USUAL: Shelf = shelf.parse({});

/**
 * The shelves of a set, from the lowest up, evenly spaced.
 * @param tall height of the panels above the rim, mm
 */
export function shelvesOf({ count, corners, size, front }: ShelfSet, tall: number): Shelf[] {
  const highest = Math.max(LOWEST, Math.min(HIGHEST, tall - BELOW_TOP));
  const apart = count === 1 ? 0 : Math.min(APART, (highest - LOWEST) / (count - 1));
  const lowest = count === 1 ? (LOWEST + highest) / 2 : LOWEST;
  return (['left', 'right'] as const)
    .filter((corner) => corners === 'both' || corners === corner)
    .flatMap((corner) =>
      Array.from(
        { length: count },
        (_, i): Shelf => ({
          ...USUAL,
          id: `${corner} ${i + 1}`,
          corner,
          aboveRim: Math.round(lowest + i * apart),
          back: size,
          side: size,
          front,
        }),
      ),
    );
}

/** The set that shelves are nearest to: that of the first one, with as many as the fuller corner has; null of none. */
export function shelfSetOf(shelves: readonly Shelf[]): ShelfSet | null {
  const [first] = shelves;
  if (first === undefined) return null;
  const left = shelves.filter(({ corner }) => corner === 'left').length;
  const right = shelves.length - left;
  const size = (first.back + first.side) / 2;
  return {
    count: Math.min(SHELF_COUNTS.at(-1)!, Math.max(left, right)),
    corners: left === 0 ? 'right' : right === 0 ? 'left' : 'both',
    size: SHELF_SIZES.reduce((best, each) => (Math.abs(each - size) < Math.abs(best - size) ? each : best)),
    front: first.front,
  };
}

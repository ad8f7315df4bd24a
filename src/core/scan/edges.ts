import type { CellCounts } from './cellCounts';
import type { RobustMean } from './histogram';

/** Where the surface goes on, one cell beyond holds this share of the points here; with less, it ends between them. */
const LEAST_SHARE = 0.2;
/** A surface that goes on does not fall by more than this from cell to cell, mm, its points' spread aside. */
const FALL = 2.5;
/** So many points say how thickly a surface is seen; stretches grow until they hold them. */
const ENOUGH = 8;
/** Cells on each side across the way, and cells along it. */
interface Stretch {
  beside: number;
  length: number;
}
/** How stretches grow. */
const STRETCHES: readonly Stretch[] = [
  { beside: 2, length: 1 },
  { beside: 4, length: 1 },
  { beside: 6, length: 1 },
  { beside: 6, length: 2 },
  { beside: 6, length: 4 },
];

/**
 * Which cells lie off every edge that falls away; those at one show the face below it as well. A cell is off the edges
 * where on each of its four sides the surface goes on, at its height and as thickly seen, or where a wall stands there.
 * Stretches of cells are compared, longer ones where few points lie, so that a thinly seen ledge does not end wherever a
 * cell happens to be empty.
 * @param raw means of all cells with any points at all
 * @param usual spread of a point in the usual cell, mm
 */
export function offEdges(
  raw: readonly (RobustMean | null)[],
  usual: number,
  { from, size, columns, rows }: Pick<CellCounts, 'from' | 'size' | 'columns' | 'rows'>,
  besideWall: (a: number, b: number) => boolean,
): boolean[] {
  const stretch = (k: number, way: Way, first: number, last: number, beside: number) => {
    const [row, column] = [Math.floor(k / columns), k % columns];
    let count = 0;
    let sum = 0;
    for (let along = first; along <= last; along++) {
      for (let across = -beside; across <= beside; across++) {
        const r = row + along * way[0] + across * way[1];
        const c = column + along * way[1] + across * way[0];
        const cell = r >= 0 && r < rows && c >= 0 && c < columns ? raw[r * columns + c]! : null;
        if (cell === null) continue;
        count += cell.count;
        sum += cell.count * cell.mean;
      }
    }
    return { count, mean: sum / count };
  };
  const goesOn = (k: number, way: Way): boolean => {
    const middle = (place: number, step: number): number => (place + step + 0.5) * size;
    if (besideWall(from[0] + middle(k % columns, way[1]), from[1] + middle(Math.floor(k / columns), way[0])))
      return true;
    const holdsEnough = ({ beside, length }: Stretch) => stretch(k, way, 1 - length, 0, beside).count >= ENOUGH;
    const { beside, length } = STRETCHES.find(holdsEnough) ?? STRETCHES.at(-1)!;
    const [here, next] = [stretch(k, way, 1 - length, 0, beside), stretch(k, way, 1, length, beside)];
    return (
      next.count > 0 &&
      next.count >= (LEAST_SHARE * here.count) / length &&
      next.mean - here.mean > -FALL - (2 * usual) / Math.sqrt(next.count)
    );
  };
  return raw.map((cell, k) => cell !== null && WAYS.every((way) => goesOn(k, way)));
}

/** Rows and columns from a cell to its neighbour. */
type Way = readonly [number, number];

const WAYS: readonly Way[] = [
  [-1, 0],
  [1, 0],
  [0, -1],
  [0, 1],
];

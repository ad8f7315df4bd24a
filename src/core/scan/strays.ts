import type { CellCounts } from './cellCounts';
import { median } from './field';
import type { RobustMean } from './histogram';

/** Neighbours within so many cells. */
const RADIUS = 4;
const LEAST_NEIGHBOURS = 3;
/** A cell may stand off the median of its neighbours by so many standard deviations and what walls do over that stretch, mm. */
const TIMES = 4;
const WALL = 0.8;

/**
 * The cells without those that stand off their surroundings: what stood close enough before the wall, or on the rim, to
 * pass for it. A cell without neighbours to compare with goes too.
 * @param cells row after row, heights off the surface's own shape
 */
export function withoutStrays(
  cells: readonly (RobustMean | null)[],
  columns: number,
  sdOf: (cell: RobustMean) => number,
): (RobustMean | null)[] {
  const rows = cells.length / columns;
  return cells.map((cell, k) => {
    if (cell === null) return null;
    const [row, column] = [Math.floor(k / columns), k % columns];
    const around: number[] = [];
    for (let r = Math.max(0, row - RADIUS); r <= Math.min(rows - 1, row + RADIUS); r++) {
      for (let c = Math.max(0, column - RADIUS); c <= Math.min(columns - 1, column + RADIUS); c++) {
        const other = cells[r * columns + c];
        if (other && (r !== row || c !== column)) around.push(other.mean);
      }
    }
    if (around.length < LEAST_NEIGHBOURS) return null;
    return Math.abs(cell.mean - median(around)) <= TIMES * Math.hypot(sdOf(cell), WALL) ? cell : null;
  });
}

/** A neighbour with less than this share of a cell's points shows that the surface ends between them. */
const LEAST_SHARE = 0.2;
/** A surface that goes on does not fall by more than this from cell to cell, mm, its points' spread aside. */
const FALL = 2.5;

/** Cells on each side that are looked at together with a cell, across the way in which the surface is followed. */
const BESIDE = 2;

/**
 * The cells without those at an edge that falls away, which show the face below it as well: a cell stays where on each of
 * its four sides the surface goes on, at its height and as thickly seen, or where a wall stands there. Short rows of cells
 * are compared, so that a thinly seen ledge does not end wherever a cell happens to be empty.
 * @param raw means of all cells with any points at all
 * @param usual spread of a point in the usual cell, mm
 */
export function withoutEdges(
  cells: readonly (RobustMean | null)[],
  raw: readonly (RobustMean | null)[],
  usual: number,
  { from, size, columns, rows }: CellCounts,
  besideWall: (a: number, b: number) => boolean,
): (RobustMean | null)[] {
  const rowOfCells = (row: number, column: number, [up, along]: readonly [number, number]) => {
    let count = 0;
    let sum = 0;
    for (let k = -BESIDE; k <= BESIDE; k++) {
      const [r, c] = [row + k * up, column + k * along];
      const cell = r >= 0 && r < rows && c >= 0 && c < columns ? raw[r * columns + c]! : null;
      if (cell === null) continue;
      count += cell.count;
      sum += cell.count * cell.mean;
    }
    return { count, mean: sum / count };
  };
  const goesOn = (row: number, column: number, [up, along]: readonly [number, number]): boolean => {
    const here = rowOfCells(row, column, [along, up]);
    const next = rowOfCells(row + up, column + along, [along, up]);
    return (
      (next.count > 0 &&
        next.count >= LEAST_SHARE * here.count &&
        next.mean - here.mean > -FALL - (2 * usual) / Math.sqrt(next.count)) ||
      besideWall(from[0] + (column + along + 0.5) * size, from[1] + (row + up + 0.5) * size)
    );
  };
  return cells.map((cell, k) =>
    cell !== null && WAYS.every((way) => goesOn(Math.floor(k / columns), k % columns, way)) ? cell : null,
  );
}

const WAYS = [
  [-1, 0],
  [1, 0],
  [0, -1],
  [0, 1],
] as const;

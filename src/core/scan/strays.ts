import { medianOfSorted } from './field';
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
  const around = new Float64Array((2 * RADIUS + 1) ** 2);
  return cells.map((cell, k) => {
    if (cell === null) return null;
    const [row, column] = [Math.floor(k / columns), k % columns];
    let count = 0;
    for (let r = Math.max(0, row - RADIUS); r <= Math.min(rows - 1, row + RADIUS); r++) {
      for (let c = Math.max(0, column - RADIUS); c <= Math.min(columns - 1, column + RADIUS); c++) {
        const other = cells[r * columns + c];
        if (other && (r !== row || c !== column)) around[count++] = other.mean;
      }
    }
    if (count < LEAST_NEIGHBOURS) return null;
    const usual = medianOfSorted(around.subarray(0, count).sort());
    return Math.abs(cell.mean - usual) <= TIMES * Math.hypot(sdOf(cell), WALL) ? cell : null;
  });
}

import { describe, expect, it } from 'vitest';
import { offEdges } from '../../../../src/core/scan/edges';
import type { RobustMean } from '../../../../src/core/scan/histogram';
import { randomFrom } from '../../../simulate/random';

const [COLUMNS, ROWS, SIZE] = [60, 6, 25];
const SPREAD = 2;
/** A ledge along the back wall: three rows of cells on it, one over its edge and the face below, nothing beyond. */
const EDGE = 3;

/** Cells of the ledge with so many points each in the mean, and gaps between columns. */
function ledge(points: number, seed: number, gap: [number, number] = [0, 0]): (RobustMean | null)[] {
  const random = randomFrom(seed);
  return Array.from({ length: ROWS * COLUMNS }, (_, k) => {
    const [row, column] = [Math.floor(k / COLUMNS), k % COLUMNS];
    let count = 0;
    for (let tries = 0; tries < 10 * points; tries++) count += random.between(0, 1) < 0.1 ? 1 : 0;
    if (row > EDGE || count === 0 || (column >= gap[0] && column < gap[1])) return null;
    const mean = (row === EDGE ? -9 : 0) + random.normal(0, SPREAD / Math.sqrt(count), 2.5);
    return { mean, spread: SPREAD, count };
  });
}

/** Beyond the first and the last column and the first row there are walls. */
const besideWall = (a: number, b: number) => b < 0 || a < 0 || a > COLUMNS * SIZE;
const kept = (cells: (RobustMean | null)[]) =>
  offEdges(cells, SPREAD, { from: [0, 0], size: SIZE, columns: COLUMNS, rows: ROWS }, besideWall);

describe('offEdges', () => {
  it('keeps a ledge up to where it falls away, however thinly it is seen', () => {
    for (const points of [40, 8, 1.5, 0.7]) {
      for (let seed = 1; seed <= 5; seed++) {
        const cells = ledge(points, seed);
        const is = kept(cells);
        const share = (row: number) => {
          const seen = cells.flatMap((cell, k) => (cell !== null && Math.floor(k / COLUMNS) === row ? [is[k]!] : []));
          return seen.filter(Boolean).length / seen.length;
        };
        const told = `${points} points a cell, seed ${seed}`;
        expect(share(0), told).toBeGreaterThan(0.6);
        if (points >= 8) expect(share(1), told).toBeGreaterThan(0.95);
        expect(share(EDGE), told).toBe(0);
      }
    }
  });

  it('drops the cells beside a gap as wide as one that something hides', () => {
    const is = kept(ledge(40, 1, [20, 34]));
    expect([is[18], is[19], is[34], is[35]]).toEqual([true, false, false, true]);
  });

  it('keeps no cell that has no points', () => {
    expect(kept(ledge(0.7, 2)).filter((each, k) => each && ledge(0.7, 2)[k] === null)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { cellsFor } from '../../../../src/scene/client/cells';

const shapes = [
  [390, 520],
  [1000, 650],
  [1440, 400],
  [520, 500],
] as const;

describe('cellsFor', () => {
  it.each(shapes)('fills a picture of %i by %i with one to four views, none over another', (width, height) => {
    for (const count of [1, 2, 3, 4]) {
      const cells = cellsFor(count, width, height);
      expect(cells).toHaveLength(count);
      const area = cells.reduce((sum, cell) => sum + cell.width * cell.height, 0);
      expect(area).toBeCloseTo(width * height, 6);
      cells.forEach((a, i) => {
        expect(a.x).toBeGreaterThanOrEqual(0);
        expect(a.x + a.width).toBeLessThanOrEqual(width + 1e-9);
        expect(a.y + a.height).toBeLessThanOrEqual(height + 1e-9);
        for (const b of cells.slice(i + 1)) {
          const apart =
            a.x + a.width <= b.x + 1e-9 ||
            b.x + b.width <= a.x + 1e-9 ||
            a.y + a.height <= b.y + 1e-9 ||
            b.y + b.height <= a.y + 1e-9;
          expect(apart).toBe(true);
        }
      });
    }
  });

  it('starts at the top left', () => {
    expect(cellsFor(3, 390, 520)[0]).toEqual({ x: 0, y: 260, width: 195, height: 260 });
    expect(cellsFor(3, 390, 520)[2]).toEqual({ x: 0, y: 0, width: 390, height: 260 });
    expect(cellsFor(2, 390, 520).map(({ y }) => y)).toEqual([260, 0]);
  });
});

import { describe, expect, it } from 'vitest';
import { lineThrough, surfaceThrough } from '../../../src/scene/geometry/sampled';

describe('lineThrough', () => {
  it('goes through its samples, straight between and beyond them', () => {
    const line = lineThrough([0, 10, 30], [1, 2, 6]);
    expect([-10, 0, 5, 10, 20, 40].map(line)).toEqual([0, 1, 1.5, 2, 4, 8]);
  });

  it('is level through a single sample', () => {
    expect(lineThrough([3], [7])(100)).toBe(7);
  });
});

describe('surfaceThrough', () => {
  it('meets a bilinear surface exactly, inside and outside the grid', () => {
    const f = (y: number, x: number) => 3 + 0.1 * x - 0.2 * y + 0.001 * x * y;
    const [rows, columns] = [
      [-100, 0, 400],
      [-50, 300],
    ];
    const surface = surfaceThrough(
      rows,
      columns,
      rows.map((y) => columns.map((x) => f(y, x))),
    );
    for (const [y, x] of [
      [0, 0],
      [-100, 300],
      [123, 45],
      [900, -400],
    ] as const)
      expect(surface(y, x)).toBeCloseTo(f(y, x), 9);
  });
});

import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core/panel';
import { gapsAlong } from '../../../../src/core/panel/gaps';

const points: Point[] = [
  [0, 0],
  [1, 10],
  [2, 20],
  [3, 30],
  [4, 40],
];

describe('gapsAlong', () => {
  it('runs from where the sheet starts to fall short to where it reaches again', () => {
    expect(gapsAlong('left', points, [1, -1, -4, -1, 3])).toEqual([
      { edge: 'left', from: [0.5, 5], to: [3.25, 32.5], max: 4 },
    ]);
  });

  it('runs to the ends where the sheet falls short there', () => {
    expect(gapsAlong('top', points, [-2, -2, -2, -2, -2])).toEqual([
      { edge: 'top', from: [0, 0], to: [4, 40], max: 2 },
    ]);
    expect(gapsAlong('top', points, [-1, 1, 1, 2, -2])).toEqual([
      { edge: 'top', from: [0, 0], to: [0.5, 5], max: 1 },
      { edge: 'top', from: [3.5, 35], to: [4, 40], max: 2 },
    ]);
  });

  it('finds none where the sheet reaches, or falls short by a hair', () => {
    expect(gapsAlong('back', points, [0, 3, 0, 1, 0])).toEqual([]);
    expect(gapsAlong('back', points, [0, -0.05, 0, -0.04, 1])).toEqual([]);
    expect(gapsAlong('back', points, [0, -0.06, 0, 0, 1])).toHaveLength(1);
  });
});

import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core/panel';
import { tapePlaces } from '../../../../src/core/trim/tape';

const strip = (from: number, to: number): Point[] => [
  [from, 0],
  [to, 0],
  [to, 38],
  [from, 38],
];

describe('tapePlaces', () => {
  it('are 60 mm from the ends and evenly between, no farther apart than told', () => {
    expect(tapePlaces(strip(0, 1020), 'x', 300)).toEqual([60, 360, 660, 960]);
    expect(tapePlaces(strip(0, 1021), 'x', 300)).toHaveLength(5);
  });

  it('are two on a short piece', () => {
    expect(tapePlaces(strip(-50, 50), 'x', 300)).toEqual([-25, 25]);
  });

  it('run along an upright piece', () => {
    expect(
      tapePlaces(
        strip(0, 1000).map(([x, y]): Point => [y, x]),
        'y',
        500,
      ),
    ).toEqual([60, 500, 940]);
  });
});

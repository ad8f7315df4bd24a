import { expect, it } from 'vitest';
import { extent } from '../../../../src/core/range';

it('spans the coordinates along one axis', () => {
  const points: [number, number][] = [
    [4, 1],
    [-2, 3],
    [0, 0],
  ];
  expect(extent(points, 0)).toEqual([-2, 4]);
  expect(extent(points, 1)).toEqual([0, 3]);
});

import { expect, it } from 'vitest';
import { gridOver } from '../../../../src/core/flatten/region';

it('gridOver covers the region evenly, its corners included', () => {
  expect(gridOver({ u: [0, 10], v: [-4, 4] }, 2)).toEqual([
    [0, -4],
    [0, 0],
    [0, 4],
    [5, -4],
    [5, 0],
    [5, 4],
    [10, -4],
    [10, 0],
    [10, 4],
  ]);
});

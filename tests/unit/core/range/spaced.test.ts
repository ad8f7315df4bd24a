import { expect, it } from 'vitest';
import { spaced } from '../../../../src/core/range';

it('ends where it is told to, in even steps', () => {
  expect(spaced(-2, 4, 4)).toEqual([-2, 0, 2, 4]);
  expect(spaced(4, -2, 3)).toEqual([4, 1, -2]);
});

it('gives the first end alone where one number is asked for', () => {
  expect(spaced(7, 9, 1)).toEqual([7]);
});

import { describe, expect, it } from 'vitest';
import { floorIndex, normalSizes } from '../../../../../src/core/layout/guillotine/normalSizes';

describe('normalSizes', () => {
  it('lists every sum of sizes up to the limit, each size no oftener than allowed', () => {
    expect(
      normalSizes(
        [
          { size: 4, most: 2 },
          { size: 7, most: 1 },
        ],
        15,
      ),
    ).toEqual([0, 4, 7, 8, 11, 15]);
    expect(normalSizes([{ size: 3, most: Number.POSITIVE_INFINITY }], 10)).toEqual([0, 3, 6, 9]);
  });

  it('knows only 0 where nothing fits', () => {
    expect(normalSizes([{ size: 11, most: 3 }], 10)).toEqual([0]);
  });
});

describe('floorIndex', () => {
  it.each([
    [0, 0],
    [3.9, 0],
    [4, 1],
    [7.5, 2],
    [99, 3],
  ])('of %d is %i', (size, index) => expect(floorIndex([0, 4, 7, 8], size)).toBe(index));
});

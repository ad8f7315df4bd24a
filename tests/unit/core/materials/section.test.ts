import { describe, expect, it } from 'vitest';
import { fillDepth, jointSection, jointVolume } from '../../../../src/core/materials';

describe('fillDepth', () => {
  it('fills a narrow joint to the thickness of the panel', () => expect(fillDepth(2, 5)).toBe(5));
  it('fills half the width of a wide one', () => expect(fillDepth(20, 5)).toBe(10));
  it('keeps within 1/4 and 1/2 in', () => {
    expect(fillDepth(8, 5)).toBe(6.35);
    expect(fillDepth(40, 5)).toBe(12.7);
  });
});

describe('jointSection', () => {
  it('is the fill and half the square of the fillet leg', () => expect(jointSection(2, 6, 4)).toBe(12 + 8));
  it('counts an overlap as closed', () => expect(jointSection(-1, 6, 4)).toBe(8));
});

describe('jointVolume', () => {
  it('integrates a joint that opens evenly', () => {
    // from 0 to 4 mm over 1 m, 6 mm deep, no fillet: mean width 2
    expect(
      jointVolume(
        [
          [0, 0],
          [250, 1],
          [1000, 4],
        ],
        6,
        0,
      ),
    ).toBeCloseTo(2 * 6 * 1000, 9);
  });
});

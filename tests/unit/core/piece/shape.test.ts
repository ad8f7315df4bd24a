import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core/panel';
import { blankSize, counterClockwise } from '../../../../src/core/piece';

const SQUARE: Point[] = [
  [0, 0],
  [4, 0],
  [4, 3],
  [0, 3],
];

describe('shapes', () => {
  it('turn counter-clockwise, and stay where they are', () => {
    expect(counterClockwise(SQUARE)).toEqual(SQUARE);
    expect(counterClockwise([...SQUARE].reverse())).toEqual(SQUARE);
  });

  it('have a blank along their axis', () => {
    expect(blankSize([SQUARE, [[-1, 1]]], 'x')).toEqual({ along: 5, across: 3 });
    expect(blankSize([SQUARE], 'y')).toEqual({ along: 3, across: 4 });
  });
});

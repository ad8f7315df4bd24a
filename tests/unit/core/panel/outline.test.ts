import { describe, expect, it } from 'vitest';
import { crossings, distanceToOutline, type Point, polygonArea } from '../../../../src/core/panel';

const square: Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const notched: Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [6, 10],
  [6, 4],
  [4, 4],
  [4, 10],
  [0, 10],
];

describe('polygonArea', () => {
  it('is positive counter-clockwise', () => {
    expect(polygonArea(square)).toBe(100);
    expect(polygonArea([...square].reverse())).toBe(-100);
    expect(polygonArea(notched)).toBe(88);
  });
});

describe('crossings', () => {
  it('are where the outline meets a level or an upright, none where it is missed', () => {
    expect(crossings(square, 1, 4).sort((a, b) => a - b)).toEqual([0, 10]);
    expect(crossings(notched, 1, 7).sort((a, b) => a - b)).toEqual([0, 4, 6, 10]);
    expect(crossings(notched, 0, 5).sort((a, b) => a - b)).toEqual([0, 4]);
    expect(crossings(square, 1, 12)).toEqual([]);
  });
});

describe('distanceToOutline', () => {
  it('is positive inside and negative outside', () => {
    expect(distanceToOutline([3, 5], square)).toBe(3);
    expect(distanceToOutline([13, 5], square)).toBe(-3);
    expect(distanceToOutline([13, 14], square)).toBe(-5);
    expect(distanceToOutline([0, 5], square)).toBeCloseTo(0, 15);
  });

  it('minds notches', () => {
    expect(distanceToOutline([5, 6], notched)).toBe(-1);
    expect(distanceToOutline([5, 3], notched)).toBe(1);
    expect(distanceToOutline([2, 7], notched)).toBe(2);
  });

  it('takes an outline with a point twice', () => {
    expect(
      distanceToOutline(
        [3, 5],
        [
          [0, 0],
          [0, 0],
          [10, 0],
          [10, 10],
          [0, 10],
        ],
      ),
    ).toBe(3);
  });
});

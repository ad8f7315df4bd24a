import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core';
import { hatchLines } from '../../../../src/output/pdf/hatchLines';

const square: Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const total = (strokes: [Point, Point][]) =>
  strokes.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);

describe('hatchLines', () => {
  it('fills a square: length of the strokes times their spacing is the area', () => {
    expect(total(hatchLines(square, 0.01, 45)) * 0.01).toBeCloseTo(100, 1);
    expect(total(hatchLines(square, 0.01, 0)) * 0.01).toBeCloseTo(100, 1);
  });
  it('leaves out what a polygon leaves out', () => {
    const hook: Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [8, 10],
      [8, 2],
      [2, 2],
      [2, 10],
      [0, 10],
    ];
    expect(total(hatchLines(hook, 0.01, 30)) * 0.01).toBeCloseTo(52, 1);
  });
  it('draws nothing for a polygon thinner than its spacing', () => {
    expect(
      hatchLines(
        [
          [0, 0.1],
          [10, 0.1],
          [10, 0.2],
          [0, 0.2],
        ],
        1,
        0,
      ),
    ).toEqual([]);
  });
});

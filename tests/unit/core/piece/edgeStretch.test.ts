import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core/panel';
import { edgeStretch } from '../../../../src/core/piece';

const square: Point[] = [
  [0, 0],
  [10, 0],
  [10, 4],
  [0, 4],
];

describe('edgeStretch', () => {
  it('runs from the corner nearest the first mark to the one nearest the last, the shorter way', () => {
    expect(
      edgeStretch(square, [
        [0.2, 0],
        [0, 3.9],
      ]),
    ).toEqual([square[0], square[3]]);
    expect(
      edgeStretch(square, [
        [0, 4],
        [0, 0],
      ]),
    ).toEqual([square[3], square[0]]);
  });

  it('goes the way that passes its own marks, be it longer', () => {
    expect(
      edgeStretch(square, [
        [0, 0],
        [10, 2.5],
        [0, 4],
      ]),
    ).toEqual(square);
  });

  it('keeps off the way that passes the marks of another edge', () => {
    const shelf: Point[] = [
      [0, 0],
      [5, 0],
      [10, 0],
      [10, 10],
      [5, 12],
    ];
    expect(
      edgeStretch(
        shelf,
        [
          [0, 0],
          [10, 10],
        ],
        [
          [5, 0],
          [10, 0],
        ],
      ),
    ).toEqual([shelf[0], shelf[4], shelf[3]]);
  });

  it('is one corner where first and last mark are nearest to the same', () => {
    expect(
      edgeStretch(square, [
        [0, 0],
        [0.1, 0.1],
      ]),
    ).toEqual([[0, 0]]);
  });
});

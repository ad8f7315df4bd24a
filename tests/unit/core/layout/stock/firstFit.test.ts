import { describe, expect, it } from 'vitest';
import { firstFitPatterns } from '../../../../../src/core/layout/stock/firstFit';

describe('firstFitPatterns', () => {
  it('packs the longest first into each stock length, so that every piece that fits is in some pattern', () => {
    const demands = [
      { length: 4, count: 2 },
      { length: 6, count: 2 },
      { length: 12, count: 1 },
    ];
    const patterns = firstFitPatterns({
      stock: [
        { length: 10, cost: 1 },
        { length: 12, cost: 1 },
      ],
      demands,
    });
    expect(patterns).toEqual([
      { stock: 0, counts: [1, 1, 0] },
      { stock: 1, counts: [0, 0, 1] },
      { stock: 1, counts: [0, 2, 0] },
      { stock: 1, counts: [2, 0, 0] },
    ]);
  });
});

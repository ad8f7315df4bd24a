import { describe, expect, it } from 'vitest';
import { bestPattern } from '../../../../../src/core/layout/stock/bestPattern';
import { randomFrom } from '../../../../simulate';

describe('bestPattern', () => {
  it('fills a length with what is worth most', () => {
    const demands = [
      { length: 45, count: 97 },
      { length: 36, count: 610 },
      { length: 31, count: 395 },
      { length: 14, count: 211 },
    ];
    expect(bestPattern(100, demands, [0.5, 0.5, 0.34, 0.15])).toEqual({
      counts: [0, 2, 0, 2],
      price: expect.closeTo(1.3, 12),
    });
    expect(bestPattern(100, demands, [0.4, 0.4, 0.36, 0.15])).toEqual({
      counts: [0, 1, 2, 0],
      price: expect.closeTo(1.12, 12),
    });
  });

  it('leaves out what has no price and what does not fit, and never cuts more than is wanted', () => {
    expect(
      bestPattern(
        10,
        [
          { length: 3, count: 2 },
          { length: 4, count: 9 },
          { length: 11, count: 1 },
        ],
        [1, 0, 50],
      ),
    ).toEqual({
      counts: [2, 0, 0],
      price: 2,
    });
  });

  it('agrees with trying every pattern', () => {
    const random = randomFrom(8);
    for (let trial = 0; trial < 100; trial++) {
      const demands = Array.from({ length: 4 }, () => ({
        length: Math.round(random.between(2, 15)),
        count: Math.round(random.between(1, 3)),
      }));
      const prices = demands.map(() => random.between(-0.1, 1));
      const { counts, price } = bestPattern(30, demands, prices);
      const sum = (of: (k: number) => number) => counts.reduce((total, count, k) => total + count * of(k), 0);
      expect(sum((k) => demands[k]!.length)).toBeLessThanOrEqual(30);
      expect(sum((k) => prices[k]!)).toBeCloseTo(price, 9);
      expect(price).toBeCloseTo(everyPattern(30, demands, prices), 9);
    }
  });
});

function everyPattern(left: number, demands: { length: number; count: number }[], prices: number[], k = 0): number {
  if (k === demands.length) return 0;
  let best = 0;
  const { length, count } = demands[k]!;
  for (let n = 0; n <= count && n * length <= left; n++) {
    best = Math.max(best, n * prices[k]! + everyPattern(left - n * length, demands, prices, k + 1));
  }
  return best;
}

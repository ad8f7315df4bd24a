import { describe, expect, it } from 'vitest';
import { exactOf, product, rounded } from '../../../../src/core/price/exact';

describe('exactOf', () => {
  it.each([
    [0.1, 1n, 10n],
    [12.345, 12345n, 1000n],
    [-0.5, -5n, 10n],
    [7, 7n, 1n],
    [1e21, 10n ** 21n, 1n],
    [2.5e-7, 25n, 10n ** 8n],
  ])('takes %d as it is written', (value, numerator, denominator) => {
    expect(exactOf(value)).toEqual({ numerator, denominator });
  });

  it('refuses what is no number', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => exactOf(value)).toThrow('finite');
  });
});

describe('rounded', () => {
  it.each([
    [0.5, 1],
    [-0.5, -1],
    [1.5, 2],
    [2.5, 3],
    [2.4999999999999, 2],
    [-2.5, -3],
    [0, 0],
  ])('rounds %d to %d', (value, whole) => {
    expect(rounded(exactOf(value))).toBe(whole);
  });

  it('rounds 1.005 × 100 up, where doubles come out below the half', () => {
    expect(1.005 * 100).toBeLessThan(100.5);
    expect(rounded(product(exactOf(1.005), exactOf(100)))).toBe(101);
  });
});

// Baarda 1968 (critical value and non-centrality, from memory; recomputed), Pope's tau: Table 1 of "On the Upper Bounds
// of Test Statistics for a Single Outlier Test in Linear Regression Models", J. Applied Mathematics 2021, art. 1478843.
import { describe, expect, it } from 'vitest';
import {
  chiSquareTail,
  DELTA_0,
  normalCritical,
  SINGLE_SIGNIFICANCE,
  tauCritical,
  Z_95,
} from '../../src/core/reliability';
import { table } from './data/tau_critical.json';

describe('critical values', () => {
  it("are Baarda's", () => {
    expect(normalCritical(SINGLE_SIGNIFICANCE)).toBeCloseTo(3.2905, 4);
    expect(normalCritical(0.01)).toBeCloseTo(2.5758, 4);
    expect(normalCritical(0.05)).toBeCloseTo(Z_95, 6);
    // Found with probability 0.80: the critical value and 0.8416 more.
    expect(DELTA_0).toBeCloseTo(normalCritical(SINGLE_SIGNIFICANCE) + 0.8416, 2);
  });

  it.each(Object.entries(table))('of tau are those of the table for n = %s in simple regression', (n, row) => {
    [0.1, 0.05, 0.01].forEach((alpha, column) => {
      // One of the 42 entries, n = 18 at 0.01, is printed 2.9919 and computes to 2.9917.
      expect(Math.abs(tauCritical(alpha / Number(n), Number(n) - 2) - row[column]!)).toBeLessThan(2.1e-4);
    });
  });

  it('of tau do not exist with fewer than two degrees of freedom', () => {
    expect(tauCritical(0.05, 1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('of chi-square', () => {
    // For two degrees of freedom the tail is exp(−x/2); for one, it is the normal's.
    expect(chiSquareTail(7, 2)).toBeCloseTo(Math.exp(-3.5), 12);
    expect(chiSquareTail(normalCritical(0.03) ** 2, 1)).toBeCloseTo(0.03, 9);
  });
});

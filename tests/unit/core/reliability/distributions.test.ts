import jStat from 'jstat';
import { describe, expect, it } from 'vitest';
import { chiSquareTail, normalPoint, studentPoint } from '../../../../src/core/reliability/distributions';

describe('distributions, against the library jstat', () => {
  it.each([0.4, 0.1, 0.025, 0.0005, 1e-6])('points exceeded with probability %d', (upper) => {
    expect(normalPoint(upper) / jStat.normal.inv(1 - upper, 0, 1)).toBeCloseTo(1, 7);
    for (const dof of [1, 2, 5, 30, 200]) {
      expect(studentPoint(upper, dof) / jStat.studentt.inv(1 - upper, dof)).toBeCloseTo(1, 6);
    }
  });

  it('upper tail of chi-square', () => {
    for (const dof of [0.5, 1, 3, 12.5, 80]) {
      for (const value of [0.1, 1, 4, 15, 60]) {
        expect(chiSquareTail(value, dof)).toBeCloseTo(1 - jStat.chisquare.cdf(value, dof), 9);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { angleSd, gapSd, lengthSd, straightedgeSd, tapeSd } from '../../../../src/core/survey';

describe('instruments', () => {
  it('a class II tape: half of 0.3 + 0.2 L mm, L in metres rounded up, and 0.5 mm of reading in quadrature', () => {
    // Directive 2014/32/EU, Annex X, chapter I: a = 0.3 mm, b = 0.2 mm/m for class II
    expect(tapeSd(500)).toBeCloseTo(Math.hypot(0.25, 0.5), 12);
    expect(tapeSd(1000)).toBeCloseTo(Math.hypot(0.25, 0.5), 12);
    expect(tapeSd(1000.1)).toBeCloseTo(Math.hypot(0.35, 0.5), 12);
    expect(tapeSd(1520)).toBeCloseTo(Math.hypot(0.35, 0.5), 12);
    expect(tapeSd(-1520)).toBe(tapeSd(1520));
    expect(tapeSd(0)).toBeCloseTo(Math.hypot(0.25, 0.5), 12);
  });

  it('taken several times, averages the reading error but not the error of tape or laser itself', () => {
    expect(tapeSd(500, 4)).toBeCloseTo(Math.hypot(0.25, 0.25), 12);
    expect(lengthSd(1500, 'tape', {}, 4)).toBe(tapeSd(1500, 4));
    expect(lengthSd(1500, 'tape', { tape: { sd: 0.9 } }, 9)).toBeCloseTo(0.3, 12);
    expect(lengthSd(1500, 'laser', {}, 9)).toBe(1);
  });

  it('takes what the job says about an instrument', () => {
    expect(lengthSd(1500, 'tape', {})).toBe(tapeSd(1500));
    expect(lengthSd(1500, 'tape', { tape: { sd: 0.9 } })).toBe(0.9);
    expect(lengthSd(1500, 'laser', { tape: { sd: 0.9 } })).toBe(1);
    expect(lengthSd(1500, 'laser', { laser: { sd: 1.5 } })).toBe(1.5);
    expect([gapSd({}), gapSd({ rule: { sd: 0.3 } })]).toEqual([0.5, 0.3]);
    expect([straightedgeSd({}), straightedgeSd({ straightedge: { sd: 0.2 } })]).toEqual([0.4, 0.2]);
    expect([angleSd({}), angleSd({ angleFinder: { sd: 0.5 } })]).toEqual([0.1, 0.5]);
  });
});

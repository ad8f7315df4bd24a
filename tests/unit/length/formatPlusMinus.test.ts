import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPlusMinus } from '../../../src/core/length';
import { mmOf } from './reading';

const INCH = 25.4;

describe('a half-width', () => {
  it('is rounded up', () => {
    expect(formatPlusMinus(0.4, { unit: 'in' })).toBe('±1/32"');
    expect(formatPlusMinus(0.8, { unit: 'in' })).toBe('±1/16"');
    expect(formatPlusMinus(0.8, { unit: 'in', denominator: 16 })).toBe('±1/16"');
    expect(formatPlusMinus(0.4, { unit: 'in', denominator: 16 })).toBe('±1/16"');
    expect(formatPlusMinus(1.01 * INCH, { unit: 'in' })).toBe('±1 1/32"');
    expect(formatPlusMinus(0.99 * INCH, { unit: 'in', feet: true })).toBe('±1"');
    expect(formatPlusMinus(0.71, { unit: 'mm' })).toBe('±0.8 mm');
    expect(formatPlusMinus(0.71, { unit: 'mm', bare: true })).toBe('±0.8');
  });

  it('on a step stays on it', () => {
    for (let n = 1; n < 320; n++) {
      expect(mmOf(formatPlusMinus((n * INCH) / 32, { unit: 'in' }).slice(1))).toBeCloseTo((n * INCH) / 32, 9);
      expect(mmOf(formatPlusMinus(n / 10, { unit: 'mm' }).slice(1))).toBeCloseTo(n / 10, 9);
    }
  });

  it('is never nought unless it is', () => {
    expect(formatPlusMinus(0, { unit: 'in' })).toBe('±0"');
    expect(formatPlusMinus(1e-12, { unit: 'in' })).toBe('±1/32"');
    expect(formatPlusMinus(1e-12, { unit: 'mm' })).toBe('±0.1 mm');
  });

  it('says so where nothing measures', () => {
    expect(formatPlusMinus(Number.POSITIVE_INFINITY, { unit: 'in' })).toBe('±?');
    expect(formatPlusMinus(Number.NaN, { unit: 'mm' })).toBe('±?');
  });

  it('never claims too much, nor a step too little', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (value) => {
        for (const [unit, step] of [
          ['in', INCH / 32],
          ['mm', 0.1],
        ] as const) {
          const shown = mmOf(formatPlusMinus(value, { unit }).slice(1));
          expect(shown).toBeGreaterThanOrEqual(value - 1e-8);
          expect(shown).toBeLessThan(value + step + 1e-8);
        }
      }),
      { seed: 20, numRuns: 1000 },
    );
  });
});

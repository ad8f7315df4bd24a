import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editableLength } from '../../../src/core/length';
import { mmOf } from './reading';

describe('text to edit', () => {
  it.each([
    [1519.2375, '59 13/16', '1519.2375'],
    [-9.525, '-3/8', '-9.525'],
    [0.396875, '1/64', '0.397'],
    [0, '0', '0'],
    [-1e-9, '0', '0'],
    [1519, '59.80315', '1519'],
    [59.81 * 25.4, '59.81', '1519.174'],
    [751.2, '29.5748', '751.2'],
    [304.8, '12', '304.8'],
  ])('of %d mm', (mm, inches, millimetres) => {
    expect(editableLength(mm, 'in')).toBe(inches);
    expect(Math.abs(Number(editableLength(mm, 'mm')) - Number(millimetres))).toBeLessThanOrEqual(0.0005);
  });

  it('is empty for what is no number', () => expect(editableLength(Number.NaN, 'in')).toBe(''));

  it('reads back within 0.0005 mm, and then stays as it is', () => {
    fc.assert(
      fc.property(fc.double({ min: -90_000, max: 90_000, noNaN: true }), fc.constantFrom('in', 'mm'), (mm, unit) => {
        const text = editableLength(mm, unit);
        const back = mmOf(text, unit);
        expect(Math.abs(back - mm)).toBeLessThanOrEqual(0.0005 + 1e-9);
        expect(editableLength(back, unit)).toBe(text);
      }),
      { seed: 20, numRuns: 1000 },
    );
  });

  it('gives back a fraction as it was written in lowest terms', () => {
    for (let parts = 0; parts < 64 * 100; parts++) {
      expect(mmOf(editableLength((parts * 25.4) / 64, 'in'))).toBe((parts * 127) / 320);
    }
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnWidths } from '../../../../src/output/pdf/columnWidths';

describe('columnWidths', () => {
  it('shares what is spare in proportion', () => {
    expect(columnWidths([10, 30], 80)).toEqual([20, 60]);
  });
  it('takes from the widest only', () => {
    expect(columnWidths([10, 20, 200], 100)).toEqual([10, 20, 70]);
    expect(columnWidths([10, 200, 200], 110)).toEqual([10, 50, 50]);
  });
  it('always fills the width exactly', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 1, max: 300, noNaN: true }), { minLength: 1, maxLength: 8 }), (natural) => {
        const widths = columnWidths(natural, 190);
        expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(190, 6);
      }),
    );
  });
});

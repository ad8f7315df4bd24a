import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backedLength } from '../../../../src/core/materials/section';
import { barsFor } from '../../../../src/core/materials/stockLines';

describe('barsFor', () => {
  it('puts each cut into the first bar that holds it, longest first', () => {
    expect(barsFor([300, 1500, 900, 700, 600], 2000)).toBe(3);
    expect(barsFor([1001, 1001, 1001], 2000)).toBe(3);
    expect(barsFor([], 2000)).toBe(0);
  });
  it('takes as many bars as a cut longer than one reaches along', () => expect(barsFor([4100], 2000)).toBe(3));
  it('never buys less than the cuts are long', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5000 }), { maxLength: 20 }), (cuts) => {
        expect(barsFor(cuts, 2000) * 2000).toBeGreaterThanOrEqual(cuts.reduce((sum, cut) => sum + cut, 0));
      }),
    );
  });
});

describe('backedLength', () => {
  it('is the stretch of 1/4 in and more', () => {
    const widths: [number, number][] = [
      [0, 3.175],
      [100, 9.525],
      [200, 9.525],
    ];
    expect(backedLength(widths)).toBeCloseTo(150, 9);
    expect(
      backedLength([
        [0, 2],
        [100, 6],
      ]),
    ).toBe(0);
  });
});

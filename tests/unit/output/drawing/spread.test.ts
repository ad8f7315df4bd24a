import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../../src/output/drawing';

describe('spread', () => {
  it('leaves labels alone that have room', () => {
    expect(spread([10, 50, 90], 20, [0, 100])).toEqual([10, 50, 90]);
  });

  it('parts two that collide by the same distance', () => {
    expect(spread([50, 52], 10, [0, 100])).toEqual([46, 56]);
  });

  it('keeps the order in which they were given', () => {
    expect(spread([52, 50], 10, [0, 100])).toEqual([56, 46]);
  });

  it('overflows at both ends alike where they do not fit', () => {
    expect(spread([0, 0, 0], 40, [0, 100])).toEqual([10, 50, 90]);
  });

  it('never lets two overlap, and stays in range where all fit', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 150, noNaN: true }), { maxLength: 12 }), (wanted) => {
        const centres = spread(wanted, 7, [0, 100]);
        const sorted = [...centres].sort((a, b) => a - b);
        sorted.slice(1).forEach((centre, i) => expect(centre - sorted[i]!).toBeGreaterThan(7 - 1e-6));
        for (const centre of centres) {
          expect(centre).toBeGreaterThan(3.5 - 1e-6);
          expect(centre).toBeLessThan(96.5 + 1e-6);
        }
      }),
    );
  });
});

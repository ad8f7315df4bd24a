import { describe, expect, it } from 'vitest';
import { limitsOf, toleranceSets } from '../../../../src/core/verdict/tolerances';

const INCH = 25.4;

describe('limits', () => {
  it('are those of the set, and say where they stand', () => {
    expect(toleranceSets.map(({ id }) => id)).toEqual([
      'trade',
      'finished',
      'finished-strict',
      'raw',
      'residential',
      'tile',
    ]);
    for (const { source, about, name } of toleranceSets) {
      expect(source).toMatch(/\.$/);
      expect(about).toMatch(/\.$/);
      expect(name).not.toBe('');
    }
  });

  it("give way, each by itself, to the person's own", () => {
    const limits = limitsOf({ set: 'tile', own: { plumb: 2, level: 1 } });
    expect(limits.plumb(1700)).toBeCloseTo(3.4, 12);
    expect(limits.level(500)).toBeCloseTo(0.5, 12);
    expect(limits.square(700)).toBeNull();
    expect(limits.flat(1000)).toBeCloseTo(INCH / 8, 12);
    expect(limitsOf({ set: 'tile', own: { flat: 2, square: 3 } }).flat(9000)).toBe(2);
    expect(limitsOf({ set: 'tile', own: { flat: 2, square: 3 } }).square(2000)).toBe(6);
  });

  it("of the trade grow with the length, but for flatness under the wall's straightedge", () => {
    const trade = limitsOf({ set: 'trade', own: {} });
    expect(trade.plumb(96 * INCH)).toBeCloseTo(INCH / 4, 12);
    expect(trade.plumb(48 * INCH)).toBeCloseTo(INCH / 8, 12);
    expect(trade.square(24 * INCH)).toBeCloseTo(INCH / 8, 12);
    expect(trade.level(60 * INCH)).toBeCloseTo((INCH / 8) * 1.25, 12);
    expect([100, 3000].map(trade.flat)).toEqual([INCH / 8, INCH / 8]);
  });

  it('never shrink with a longer straightedge', () => {
    for (const set of toleranceSets) {
      for (const property of ['plumb', 'flat', 'square', 'level'] as const) {
        let before = 0;
        for (let length = 50; length < 20_000; length += 50) {
          const limit = set[property](length);
          if (limit === null) continue;
          expect(limit, `${set.id} ${property} ${length}`).toBeGreaterThanOrEqual(before);
          before = limit;
        }
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../src/core/verdict';

const INCH = 25.4;
const at = (set: 'finished' | 'finished-strict' | 'raw' | 'residential' | 'tile') => limitsOf({ set, own: {} });

/** DIN 18202, table 3, read in a trade association's handbook; the lengths between are that handbook's own. */
describe('DIN 18202 flatness, mm by length in m', () => {
  const lengths = [0.1, 1, 4, 10, 15];
  const between = [0.6, 1.5, 2, 2.5, 3, 3.5];
  it.each([
    ['raw', lengths, [5, 10, 15, 25, 30]],
    ['finished', lengths, [3, 5, 10, 20, 25]],
    ['finished', between, [4, 6, 7, 8, 8, 9]],
    ['finished-strict', lengths, [2, 3, 8, 15, 20]],
    ['finished-strict', between.slice(1), [4, 5, 6, 6, 7]],
    ['finished', [0.05, 20], [3, 25]],
  ] as const)('%s', (set, metres, depths) => {
    expect(metres.map((length) => at(set).flat(length * 1000))).toEqual([...depths]);
  });
});

/** DIN 18202, table 2, read on a page that quotes it. */
describe('DIN 18202 offset from plumb, level and square', () => {
  it.each(['plumb', 'level', 'square'] as const)('%s', (property) => {
    const limit = at('finished')[property];
    const [lengths, offsets] = [
      [0.3, 0.5, 0.501, 1, 1.001, 3, 3.001, 6, 6.001, 15, 15.001, 30, 30.001],
      [3, 3, 6, 6, 8, 8, 12, 12, 16, 16, 20, 20, 30],
    ];
    expect(lengths.map((length) => limit(length * 1000))).toEqual(offsets);
  });
});

describe('residential guidelines, as quoted by others', () => {
  it('plumb: 3/8 in in 32 in, which is 0.9375 in over 80 in', () => {
    expect(at('residential').plumb(32 * INCH)! / INCH).toBeCloseTo(0.375, 12);
    expect(at('residential').plumb(80 * INCH)! / INCH).toBeCloseTo(0.9375, 12);
    expect(at('residential').plumb(1000)).toBeCloseTo(11.72, 2);
  });

  it('bow: 1/4 in in 32 in, 1/2 in in 8 ft, nothing about square and level', () => {
    expect(at('residential').flat(32 * INCH)! / INCH).toBeCloseTo(1 / 4, 12);
    expect(at('residential').flat(96 * INCH)! / INCH).toBeCloseTo(1 / 2, 12);
    expect(at('residential').flat(300)! / INCH).toBeCloseTo(1 / 4, 12);
    expect([at('residential').square(700), at('residential').level(700)]).toEqual([null, null]);
  });
});

/** ANSI A108.02 for an edge of 15 in or more, quoted word for word by a trade journal. */
describe('tile substrate', () => {
  it('flat: 1/16 in in 2 ft, 1/8 in in 10 ft', () => {
    expect(at('tile').flat(24 * INCH)! / INCH).toBeCloseTo(1 / 16, 12);
    expect(at('tile').flat(120 * INCH)! / INCH).toBeCloseTo(1 / 8, 12);
    expect(at('tile').plumb(1000)).toBeNull();
  });
});

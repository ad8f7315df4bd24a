import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FractionDenominator, formatLength, printLength } from '../../../src/core/length';
import { mmOf } from './reading';

const INCH = 25.4;
const to16 = { unit: 'in' } as const;
const to32 = { unit: 'in', denominator: 32 } as const;
const mm = { unit: 'mm' } as const;

describe('inches', () => {
  it('are whole and reduced fraction', () => {
    expect(formatLength(1519.2375, to16)).toBe('59 13/16"');
    expect(formatLength(1519.2375, to32)).toBe('59 13/16"');
    expect(formatLength(59.5 * INCH, to32)).toBe('59 1/2"');
    expect(formatLength(0.75 * INCH, to16)).toBe('3/4"');
    expect(formatLength(INCH / 32, to32)).toBe('1/32"');
    expect(formatLength(12 * INCH, to16)).toBe('12"');
    expect(formatLength(0, to16)).toBe('0"');
  });

  it('carry to the next whole inch', () => {
    expect(formatLength(59.99 * INCH, to16)).toBe('60"');
    expect(formatLength(0.98 * INCH, to16)).toBe('1"');
    expect(formatLength(0.98 * INCH, to32)).toBe('31/32"');
  });

  it('put the sign before the whole, and none before nought', () => {
    expect(formatLength(-1519.2375, to16)).toBe('−59 13/16"');
    expect(formatLength(-9.525, to16)).toBe('−3/8"');
    expect(formatLength(-0.1, to16)).toBe('0"');
    expect(Object.is(printLength(-0.1, to16).mm, 0)).toBe(true);
  });

  it('leave the mark off when bare', () => expect(formatLength(1519.2375, { ...to16, bare: true })).toBe('59 13/16'));
});

describe('feet and inches', () => {
  const feet = { unit: 'in', feet: true } as const;
  it('from one foot up', () => {
    expect(formatLength(1519.2375, feet)).toBe('4\' 11 13/16"');
    expect(formatLength(48 * INCH, feet)).toBe('4\' 0"');
    expect(formatLength(48.5 * INCH, feet)).toBe('4\' 1/2"');
    expect(formatLength(11.75 * INCH, feet)).toBe('11 3/4"');
    expect(formatLength(-1519.2375, feet)).toBe('−4\' 11 13/16"');
    expect(formatLength(1519.2375, { ...feet, bare: true })).toBe("4' 11 13/16");
  });

  it('carry to the next foot', () => {
    expect(formatLength(11.99 * INCH, feet)).toBe('1\' 0"');
    expect(formatLength(59.99 * INCH, feet)).toBe('5\' 0"');
  });
});

describe('millimetres', () => {
  it('have one decimal', () => {
    expect(formatLength(1519.2375, mm)).toBe('1519.2 mm');
    expect(formatLength(1519, mm)).toBe('1519.0 mm');
    expect(formatLength(0.04, mm)).toBe('0.0 mm');
    expect(formatLength(-0.04, mm)).toBe('0.0 mm');
    expect(formatLength(-7.06, mm)).toBe('−7.1 mm');
    expect(formatLength(999.96, { ...mm, bare: true })).toBe('1000.0');
  });
});

it('prints a dash for what is no number', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(formatLength(value, to16)).toBe('–');
    expect(formatLength(value, mm)).toBe('–');
  }
});

describe('a tie', () => {
  it('goes away from zero', () => {
    expect(formatLength(INCH / 32, to16)).toBe('1/16"');
    expect(formatLength(-INCH / 32, to16)).toBe('−1/16"');
    expect(formatLength(59 * INCH + (3 / 32) * INCH, to16)).toBe('59 1/8"');
    expect(formatLength(INCH / 64, to32)).toBe('1/32"');
    expect(formatLength(0.05, mm)).toBe('0.1 mm');
    expect(formatLength(-0.25, mm)).toBe('−0.3 mm');
    expect(formatLength(1.35, mm)).toBe('1.4 mm');
  });

  it('is kept through what doubles lose, at every odd 1/32 and 1/64 in to 100 in', () => {
    for (const denominator of [16, 32] as const) {
      for (let odd = 1; odd < 2 * denominator * 100; odd += 2) {
        const tie = (odd * 127) / (10 * denominator);
        expect(printLength(tie, { unit: 'in', denominator }).mm).toBeGreaterThan(tie);
        expect(printLength(-tie, { unit: 'in', denominator }).mm).toBeLessThan(-tie);
      }
    }
  });
});

describe('any length', () => {
  const runs = { seed: 20, numRuns: 1000 };
  /** whole nanometres, so that the exact answer can be had in integers */
  const nanometres = fc.oneof(
    fc.bigInt({ min: -4_000_000_000n, max: 4_000_000_000n }),
    fc.integer({ min: -5000, max: 5000 }).map((n) => BigInt(n) * 396_875n),
  );
  const denominators = fc.constantFrom<FractionDenominator>(16, 32);
  const lengths = fc.double({ min: -90_000, max: 90_000, noNaN: true });

  /** The nearest whole number to above/below, a tie away from zero. */
  function nearest(above: bigint, below: bigint): bigint {
    const size = (2n * (above < 0n ? -above : above) + below) / (2n * below);
    return above < 0n ? -size : size;
  }

  it('prints as the nearest step worked out in integers', () => {
    fc.assert(
      fc.property(nanometres, denominators, (nm, denominator) => {
        const value = Number(nm) / 1e6;
        const parts = Number(nearest(nm * BigInt(denominator), 25_400_000n));
        const printed = printLength(value, { unit: 'in', denominator });
        expect(printed.mm).toBeCloseTo((parts * 127) / (5 * denominator), 9);
        expect(mmOf(printed.text)).toBeCloseTo(printed.mm, 9);
        expect(mmOf(formatLength(value, mm))).toBeCloseTo(Number(nearest(nm, 100_000n)) / 10, 9);
      }),
      runs,
    );
  });

  it('reads back to within half a step, and the error is told', () => {
    fc.assert(
      fc.property(lengths, denominators, fc.boolean(), fc.boolean(), (value, denominator, feet, bare) => {
        for (const [format, step] of [
          [{ unit: 'in', denominator, feet, bare } as const, INCH / denominator],
          [{ unit: 'mm', bare } as const, 0.1],
        ] as const) {
          const printed = printLength(value, format);
          const back = mmOf(printed.text, format.unit);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(step / 2 + 1e-8);
          expect(back - value).toBeCloseTo(printed.error, 8);
          expect(printed.mm - value).toBe(printed.error);
        }
      }),
      runs,
    );
  });

  it('prints fractions in lowest terms, below one', () => {
    fc.assert(
      fc.property(lengths, denominators, (value, denominator) => {
        const [, above, below] = /(\d+)\/(\d+)"$/.exec(formatLength(value, { unit: 'in', denominator })) ?? [];
        if (above === undefined) return;
        expect(Number(above) % 2).toBe(1);
        expect(Number(above)).toBeLessThan(Number(below));
        expect(denominator % Number(below)).toBe(0);
      }),
      runs,
    );
  });

  it('prints no shorter than a shorter one, and mirrored alike', () => {
    fc.assert(
      fc.property(lengths, fc.double({ min: 0, max: 2, noNaN: true }), denominators, (value, more, denominator) => {
        for (const format of [{ unit: 'in', denominator }, mm] as const) {
          expect(printLength(value + more, format).mm).toBeGreaterThanOrEqual(printLength(value, format).mm);
          expect(printLength(-value, format).mm).toBeCloseTo(-printLength(value, format).mm, 12);
        }
      }),
      runs,
    );
  });
});

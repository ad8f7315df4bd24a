import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, constant, type Dual, fixedPoint, fixedValue, multiply, scale, shift } from '../../../../src/core/dual';

const parameters = (...values: number[]): Dual[] =>
  values.map((value, i) => ({ value, gradient: Float64Array.from(values, (_, j) => (i === j ? 1 : 0)) }));

describe('fixedValue', () => {
  it('solves a straight map whatever its slope', () => {
    for (const slope of [0, 0.02, 0.9, -0.9, -4, 7]) {
      expect(fixedValue((x) => slope * x + 12, 3)).toBeCloseTo(12 / (1 - slope), 9);
    }
  });

  it('solves a curved map', () => {
    expect(fixedValue(Math.cos, 0)).toBeCloseTo(0.7390851332151607, 12); // Dottie number
    // x = 700 + 1e-5 x²: the near root of 1e-5 x² − x + 700 = 0
    expect(fixedValue((x) => 700 + 1e-5 * x * x, 700)).toBeCloseTo((1 - Math.sqrt(1 - 4 * 1e-5 * 700)) / 2e-5, 9);
  });

  it('takes few looks at a gently sloping map', () => {
    let looks = 0;
    fixedValue((x) => {
      looks++;
      return -762 + 0.012 * (0.009 * x + 4e-6 * x * x);
    }, -762);
    expect(looks).toBeLessThanOrEqual(5);
  });

  it('gives the first look, held within reach, where there is no solution', () => {
    expect(fixedValue((x) => x + 3, 10)).toBe(13);
    expect(fixedValue((x) => x * x + 1, 0)).toBe(1);
    expect(fixedValue((x) => x + 1e9, 10)).toBe(5010);
    expect(fixedValue((x) => (x > 5 ? -1e300 : 1e300), 10)).toBe(-4990);
  });
});

describe('fixedPoint', () => {
  it('gives the closed form of x = a x + b and its derivatives', () => {
    fc.assert(
      fc.property(fc.integer({ min: -95, max: 95 }), fc.integer({ min: -200, max: 200 }), (percent, offset) => {
        const [a, b] = parameters(percent / 100, offset) as [Dual, Dual];
        const x = fixedPoint((x) => add(multiply(a, x), b), 1);
        const left = 1 - a.value;
        expect(x.value).toBeCloseTo(b.value / left, 7);
        expect(x.gradient![0]! / (b.value / left ** 2 || 1)).toBeCloseTo(b.value === 0 ? 0 : 1, 7);
        expect(x.gradient![1]).toBeCloseTo(1 / left, 7);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('gives the derivatives where the map does not contract', () => {
    const [a, b] = parameters(-3, 8) as [Dual, Dual];
    const x = fixedPoint((x) => add(multiply(a, x), b), 0);
    expect(x.value).toBeCloseTo(2, 9);
    expect(x.gradient![0]).toBeCloseTo(8 / 16, 9);
    expect(x.gradient![1]).toBeCloseTo(1 / 4, 9);
  });

  it('nests: the solution of a map that itself solves one', () => {
    const [a, b] = parameters(0.2, 5) as [Dual, Dual];
    // y = a y + x, x = 0.5 y + b, so x (1 − a) = 0.5 x + b (1 − a)
    const x = fixedPoint(
      (x) =>
        add(
          scale(
            fixedPoint((y) => add(multiply(a, y), x), 0),
            0.5,
          ),
          b,
        ),
      0,
    );
    const closed = (a: number, b: number): number => (b * (1 - a)) / (0.5 - a);
    expect(x.value).toBeCloseTo(closed(0.2, 5), 9);
    const h = 1e-6;
    expect(x.gradient![0]).toBeCloseTo((closed(0.2 + h, 5) - closed(0.2 - h, 5)) / (2 * h), 5);
    expect(x.gradient![1]).toBeCloseTo(0.8 / 0.3, 8);
  });

  it('carries no derivatives where the map has none', () => {
    expect(fixedPoint((x) => shift(scale(x, 0.5), 1), 0)).toEqual({ value: 2, gradient: null });
    expect(fixedPoint(() => constant(4), 0)).toEqual({ value: 4, gradient: null });
  });

  it('stays finite where the solution slides along', () => {
    const [b] = parameters(3) as [Dual];
    const x = fixedPoint((x) => add(x, b), 10);
    expect(x.value).toBe(13);
    expect(Math.abs(x.gradient![0]!)).toBeLessThanOrEqual(1000);
  });
});

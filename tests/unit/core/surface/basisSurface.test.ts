import { describe, expect, it } from 'vitest';
import { constant, type Dual } from '../../../../src/core/dual';
import { basisSurface, type Monomial, polynomialBasis } from '../../../../src/core/surface';

const TERMS: Monomial[] = [
  [0, 0],
  [0, 1],
  [1, 0],
  [1, 1],
  [0, 2],
  [2, 0],
];
/** Two entries of other surfaces, then c, b, a, ab, b², a². */
const PARAMETERS = [9, 9, 5, 0.01, -0.02, 3e-5, -4e-6, 7e-6];
const surface = basisSurface(polynomialBasis(TERMS), PARAMETERS, 2);

const height = (a: number, b: number): number => 5 + 0.01 * b - 0.02 * a + 3e-5 * a * b - 4e-6 * b * b + 7e-6 * a * a;

describe('basisSurface', () => {
  it('is the weighted sum of its functions', () => {
    for (const [a, b] of [
      [0, 0],
      [300, -700],
      [-750, 900],
    ] as const) {
      expect(surface.value(a, b)).toBeCloseTo(height(a, b), 12);
    }
  });

  it('has their derivatives', () => {
    expect(surface.gradient(300, -700)).toEqual([
      expect.closeTo(-0.02 + 3e-5 * -700 + 2 * 7e-6 * 300, 15),
      expect.closeTo(0.01 + 3e-5 * 300 - 2 * 4e-6 * -700, 15),
    ]);
    expect(surface.curvature(300, -700)).toEqual([14e-6, 3e-5, -8e-6].map((each) => expect.closeTo(each, 18)));
  });

  it("has its functions as derivatives with respect to its parameters, and none of another surface's", () => {
    const { value, gradient } = surface.at(constant(300), constant(-700));
    expect(value).toBeCloseTo(height(300, -700), 12);
    expect([...gradient!]).toEqual([0, 0, 1, -700, 300, -210_000, 490_000, 90_000]);
  });

  it('passes on how its coordinates move with the parameters', () => {
    const a: Dual = { value: 300, gradient: Float64Array.of(2, 0, 0, 0, 0, 0, 0, 0) };
    const b: Dual = { value: -700, gradient: Float64Array.of(0, 3, 0, 0, 0, 0, 0, 0) };
    const [slopeA, slopeB] = surface.gradient(300, -700);
    const at = surface.at(a, b).gradient!;
    expect(at[0]).toBeCloseTo(2 * slopeA, 15);
    expect(at[1]).toBeCloseTo(3 * slopeB, 15);
    expect([...at.slice(2)]).toEqual([1, -700, 300, -210_000, 490_000, 90_000]);
  });

  it('gives its slope with derivatives likewise', () => {
    const a: Dual = { value: 300, gradient: Float64Array.of(2, 0, 0, 0, 0, 0, 0, 0) };
    const { value, gradient } = surface.slopeAt(a, constant(-700));
    expect(value).toBeCloseTo(surface.gradient(300, -700)[0], 15);
    expect(gradient![0]).toBeCloseTo(2 * 14e-6, 18);
    expect([...gradient!.slice(2)]).toEqual([0, 0, 1, -700, 0, 600]);
  });

  it('is flat without functions', () => {
    expect(basisSurface(polynomialBasis([]), [], 0).value(3, 4)).toBe(0);
  });
});

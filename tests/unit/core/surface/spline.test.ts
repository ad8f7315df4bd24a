import { describe, expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import { basisSurface, splineBasis } from '../../../../src/core/surface';

const ACROSS = { from: -700, to: 800, intervals: 3 };
const UP = { from: -600, to: 900, intervals: 4 };
const basis = splineBasis(ACROSS, UP);
const coefficients = Float64Array.from({ length: basis.count }, (_, k) => Math.sin(7 * k) * 3);
const surface = basisSurface(basis, coefficients, 0);
const PLACES = [
  [-700, -600],
  [-321, 44],
  [0, 0],
  [233, 899],
  [799.5, 512],
] as const;

describe('splineBasis', () => {
  it('has a function for every interval and three more, each way', () => {
    expect(basis.count).toBe(6 * 7);
  });

  it('adds up to 1 over the stretches', () => {
    const ones = basisSurface(basis, new Float64Array(basis.count).fill(1), 0);
    for (const [a, b] of PLACES) expect(ones.value(a, b)).toBeCloseTo(1, 12);
  });

  it('has the textbook values of a cardinal cubic B-spline at its knots: 2/3 and 1/6', () => {
    const one = Float64Array.from({ length: basis.count }, (_, k) => (k === 2 + 6 * 3 ? 1 : 0));
    const bump = basisSurface(basis, one, 0);
    const [a, b] = [-700 + 500, -600 + 375 * 2];
    expect(bump.value(a, b)).toBeCloseTo((2 / 3) ** 2, 12);
    expect(bump.value(a + 500, b)).toBeCloseTo(2 / 18, 12);
    expect(bump.value(a + 1000, b)).toBe(0);
  });

  it('has the gradient and curvature that central differences give', () => {
    const h = 0.01;
    for (const [a, b] of PLACES) {
      const [ga, gb] = surface.gradient(a, b);
      expect(ga).toBeCloseTo((surface.value(a + h, b) - surface.value(a - h, b)) / (2 * h), 8);
      expect(gb).toBeCloseTo((surface.value(a, b + h) - surface.value(a, b - h)) / (2 * h), 8);
      const [aa, ab, bb] = surface.curvature(a, b);
      expect(aa).toBeCloseTo((surface.gradient(a + h, b)[0] - surface.gradient(a - h, b)[0]) / (2 * h), 6);
      expect(ab).toBeCloseTo((surface.gradient(a, b + h)[0] - surface.gradient(a, b - h)[0]) / (2 * h), 6);
      expect(bb).toBeCloseTo((surface.gradient(a, b + h)[1] - surface.gradient(a, b - h)[1]) / (2 * h), 6);
    }
  });

  it('bends without a break', () => {
    const knot = -700 + 500;
    const [before, after] = [-1e-6, 1e-6].map((step) => surface.curvature(knot + step, 50)[0]);
    expect(after).toBeCloseTo(before!, 9);
  });

  it('carries its own values as derivatives with respect to the coefficients', () => {
    const { value, gradient } = surface.at(constant(100), constant(200));
    expect(gradient!.reduce((sum, each, k) => sum + each * coefficients[k]!, 0)).toBeCloseTo(value, 12);
  });

  it('falls to nothing within three intervals outside', () => {
    expect(surface.value(800 + 1501, 0)).toBe(0);
    expect(surface.value(0, -600 - 1126)).toBe(0);
  });
});

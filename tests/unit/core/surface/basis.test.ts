import { describe, expect, it } from 'vitest';
import { anchoredBasis, basisSurface, type Monomial, polynomialBasis } from '../../../../src/core/surface';

const TERMS: Monomial[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [2, 0],
  [1, 1],
  [3, 1],
];
const free = polynomialBasis(TERMS);
const anchored = anchoredBasis(free);
const weights = [4, 0.3, 0.02, 1e-4, 2e-4, 3e-9];

describe('anchoredBasis', () => {
  it('has no height and no slope along the level line at the origin', () => {
    const surface = basisSurface(anchored, weights, 0);
    expect(surface.value(0, 0)).toBe(0);
    expect(surface.gradient(0, 0)[0]).toBe(0);
    expect(surface.gradient(0, 0)[1]).toBe(0.02);
  });

  it('differs from the free surface by that height and slope alone', () => {
    const [fixed, loose] = [anchored, free].map((basis) => basisSurface(basis, weights, 0));
    for (const [a, b] of [
      [300, -200],
      [-50, 700],
    ] as const) {
      expect(loose!.value(a, b) - fixed!.value(a, b)).toBeCloseTo(4 + 0.3 * a, 10);
      expect(loose!.gradient(a, b)[0] - fixed!.gradient(a, b)[0]).toBeCloseTo(0.3, 12);
      expect(loose!.gradient(a, b)[1]).toBe(fixed!.gradient(a, b)[1]);
      expect(loose!.curvature(a, b)).toEqual(fixed!.curvature(a, b));
    }
  });
});

import { expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import { basisSurface, polynomialBasis, sumSurface } from '../../../../src/core/surface';

it('sumSurface adds heights, slopes, curvatures and derivatives', () => {
  const parameters = [3, 0.1, 2e-4, 5e-5];
  const first = basisSurface(
    polynomialBasis([
      [0, 0],
      [1, 0],
    ]),
    parameters,
    0,
  );
  const second = basisSurface(
    polynomialBasis([
      [1, 1],
      [2, 0],
    ]),
    parameters,
    2,
  );
  const sum = sumSurface(first, second);
  const [a, b] = [200, -300];
  expect(sum.value(a, b)).toBeCloseTo(3 + 20 - 12 + 2, 12);
  expect(sum.gradient(a, b)).toEqual([expect.closeTo(0.1 - 0.06 + 0.02, 12), expect.closeTo(0.04, 12)]);
  expect(sum.curvature(a, b)).toEqual([1e-4, 2e-4, 0]);
  expect([...sum.at(constant(a), constant(b)).gradient!]).toEqual([1, 200, -60_000, 40_000]);
  expect([...sum.slopeAt(constant(a), constant(b)).gradient!]).toEqual([0, 1, -300, 400]);
});

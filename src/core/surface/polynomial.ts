import type { Basis } from './basis';

/** Exponents [i, j] of a term aⁱ bʲ. */
export type Monomial = readonly [number, number];

/** Terms aⁱ bʲ; a quadratic coefficient is in 1/mm. */
export const polynomialBasis = (terms: readonly Monomial[]): Basis => ({
  count: terms.length,
  fill(out, offset, a, b, da, db) {
    for (let k = 0; k < terms.length; k++) {
      const [i, j] = terms[k]!;
      out[offset + k] = powerDerivative(i, a, da) * powerDerivative(j, b, db);
    }
  },
});

/** d^order/dx^order of xⁿ. */
function powerDerivative(n: number, x: number, order: number): number {
  if (order > n) return 0;
  let factor = 1;
  for (let k = 0; k < order; k++) factor *= n - k;
  for (let k = order; k < n; k++) factor *= x;
  return factor;
}

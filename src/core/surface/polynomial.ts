import type { Basis } from './basis';

/** Exponents [i, j] of a term aⁱ bʲ. */
export type Monomial = readonly [number, number];

/** Terms aⁱ bʲ; a quadratic coefficient is in 1/mm. */
export const polynomialBasis = (terms: readonly Monomial[]): Basis => ({
  count: terms.length,
  fill(out, offset, a, b, da, db) {
    for (let k = 0; k < terms.length; k++) {
      const term = terms[k]!;
      out[offset + k] = powerDerivative(term[0], a, da) * powerDerivative(term[1], b, db);
    }
  },
});

/** d^order/dx^order of xⁿ. */
function powerDerivative(n: number, x: number, order: number): number {
  if (order === 0) return power(n, x);
  if (order > n) return 0;
  let factor = n;
  for (let k = 1; k < order; k++) factor *= n - k;
  return factor * power(n - order, x);
}

const power = (n: number, x: number): number => (n === 0 ? 1 : n === 1 ? x : n === 2 ? x * x : x ** n);

import type { Dual } from '../dual';
import type { Surface } from './surface';

/** Exponents [i, j] of a term aⁱ bʲ. */
export type Monomial = readonly [number, number];

/**
 * Surface Σ c_k a^i_k b^j_k. Its coefficients are the entries offset … offset + terms.length − 1 of the parameter
 * vector; coordinates in mm, so a quadratic coefficient is in 1/mm.
 */
export function polynomialSurface(terms: readonly Monomial[], parameters: ArrayLike<number>, offset: number): Surface {
  const count = parameters.length;
  const coefficient = (k: number): number => parameters[offset + k]!;

  /** Sum of the derivative of order (da, db) of each term, times its coefficient. */
  const sum = (a: number, b: number, da: number, db: number): number => {
    let total = 0;
    for (let k = 0; k < terms.length; k++) total += coefficient(k) * monomial(terms[k]!, a, b, da, db);
    return total;
  };

  const dual = (a: Dual, b: Dual, da: number): Dual => {
    const gradient = new Float64Array(count);
    let value = 0;
    for (let k = 0; k < terms.length; k++) {
      const basis = monomial(terms[k]!, a.value, b.value, da, 0);
      gradient[offset + k] = basis;
      value += coefficient(k) * basis;
    }
    if (a.gradient !== null) addScaled(gradient, a.gradient, sum(a.value, b.value, da + 1, 0));
    if (b.gradient !== null) addScaled(gradient, b.gradient, sum(a.value, b.value, da, 1));
    return { value, gradient };
  };

  return {
    value: (a, b) => sum(a, b, 0, 0),
    gradient: (a, b) => [sum(a, b, 1, 0), sum(a, b, 0, 1)],
    curvature: (a, b) => [sum(a, b, 2, 0), sum(a, b, 1, 1), sum(a, b, 0, 2)],
    at: (a, b) => dual(a, b, 0),
    slopeAt: (a, b) => dual(a, b, 1),
  };
}

function monomial([i, j]: Monomial, a: number, b: number, da: number, db: number): number {
  return powerDerivative(i, a, da) * powerDerivative(j, b, db);
}

/** d^order/dx^order of xⁿ. */
function powerDerivative(n: number, x: number, order: number): number {
  if (order > n) return 0;
  let factor = 1;
  for (let k = 0; k < order; k++) factor *= n - k;
  for (let k = order; k < n; k++) factor *= x;
  return factor;
}

function addScaled(target: Float64Array, source: Float64Array, factor: number): void {
  for (let i = 0; i < target.length; i++) target[i] = target[i]! + factor * source[i]!;
}

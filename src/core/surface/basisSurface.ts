import type { Dual } from '../dual';
import type { Basis } from './basis';
import type { Surface } from './surface';

/**
 * Surface Σ c_k φ_k(a, b). Its coefficients are the entries offset … offset + count − 1 of the parameter vector;
 * coordinates and heights in mm.
 */
export function basisSurface(basis: Basis, parameters: ArrayLike<number>, offset: number): Surface {
  const { count } = basis;
  const coefficients = Float64Array.from({ length: count }, (_, k) => parameters[offset + k]!);
  const values = new Float64Array(count);

  /** Derivative of the surface of order (da, db). */
  const sum = (a: number, b: number, da: number, db: number): number => {
    basis.fill(values, 0, a, b, da, db);
    let total = 0;
    for (let k = 0; k < count; k++) total += coefficients[k]! * values[k]!;
    return total;
  };

  const dual = (a: Dual, b: Dual, da: number): Dual => {
    const gradient = new Float64Array(parameters.length);
    basis.fill(gradient, offset, a.value, b.value, da, 0);
    let value = 0;
    for (let k = 0; k < count; k++) value += coefficients[k]! * gradient[offset + k]!;
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

function addScaled(target: Float64Array, source: Float64Array, factor: number): void {
  for (let i = 0; i < target.length; i++) target[i]! += factor * source[i]!;
}

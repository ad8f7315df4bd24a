import { constant, type Dual } from './dual';

/**
 * Solves x = next(x) by iteration, derivatives included. The maps used here contract by a wall's slope (below 0.1), so
 * values and derivatives converge together, at least a decimal digit a step; two more steps after the value stands
 * still settle the derivatives.
 * @param start value near the solution
 */
export function fixedPoint(next: (x: Dual) => Dual, start: number): Dual {
  let x: Dual = constant(start);
  let settled = 0;
  for (let step = 0; step < 60 && settled < 3; step++) {
    const y = next(x);
    settled = Math.abs(y.value - x.value) <= 1e-11 * (1 + Math.abs(y.value)) ? settled + 1 : 0;
    x = y;
  }
  return x;
}

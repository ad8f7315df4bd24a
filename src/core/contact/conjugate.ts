import type { Cycle } from './cycle';
import { type Stencil, times } from './stencil';

/**
 * Conjugate gradients on A x = b with one V-cycle as preconditioner; improves x until the residual's sum is below
 * `enough`. A need only be positive definite on the rows that are there. Saad, Iterative Methods for Sparse Linear
 * Systems, 2nd ed., algorithm 9.1.
 *
 * @returns the sum of the residual's magnitudes, in the unit of b
 */
export function conjugateGradients(
  matrix: Stencil,
  cycle: Cycle,
  b: Float64Array,
  x: Float64Array,
  enough: number,
  mostSteps = 60,
): number {
  const size = b.length;
  const [product, better, direction] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  const residual = times(matrix, x, product).map((value, k) => (b[k] as number) - value);
  let left = magnitude(residual);
  let last = 0;
  for (let count = 0; count < mostSteps && left > enough; count++) {
    better.fill(0);
    cycle.run(residual, better);
    const now = dot(residual, better);
    const share = count === 0 ? 0 : now / last;
    for (let k = 0; k < size; k++) direction[k] = (better[k] as number) + share * (direction[k] as number);
    times(matrix, direction, product);
    const length = now / dot(direction, product);
    if (!Number.isFinite(length)) break;
    for (let k = 0; k < size; k++) {
      x[k] = (x[k] as number) + length * (direction[k] as number);
      residual[k] = (residual[k] as number) - length * (product[k] as number);
    }
    left = magnitude(residual);
    last = now;
  }
  return left;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

/** Sum of the magnitudes. */
export function magnitude(a: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += Math.abs(a[k] as number);
  return sum;
}

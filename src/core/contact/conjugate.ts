import type { Cycle } from './cycle';
import { tiedTimes } from './truncated';

/**
 * Conjugate gradients on A x = b with one V-cycle as preconditioner; improves x until the residual's sum is below
 * `enough`, or below `fair` and its energy norm below `share` of what it was. A need only be positive definite on the rows that are
 * there. Saad, Iterative Methods for Sparse Linear Systems, 2nd ed., algorithm 9.1.
 *
 * @returns the sum of the residual's magnitudes, in the unit of b
 */
export function conjugateGradients(
  cycle: Cycle,
  b: Float64Array,
  x: Float64Array,
  {
    enough,
    fair = 0,
    share = 0,
    mostSteps = 60,
  }: { enough: number; fair?: number; share?: number; mostSteps?: number },
): number {
  const size = b.length;
  const [product, better, direction] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  const residual = Float64Array.from(b);
  if (x.some((value) => value !== 0)) {
    tiedTimes(cycle.matrix, x, product);
    for (let k = 0; k < size; k++) residual[k] = residual[k]! - product[k]!;
  }
  let left = magnitude(residual);
  let [first, last] = [0, 0];
  for (let count = 0; count < mostSteps && left > enough; count++) {
    cycle.run(residual, better);
    const now = dot(residual, better);
    if (count === 0) first = now;
    else if (left <= fair && now <= share * share * first) break;
    const mix = count === 0 ? 0 : now / last;
    for (let k = 0; k < size; k++) direction[k] = better[k]! + mix * direction[k]!;
    tiedTimes(cycle.matrix, direction, product);
    const length = now / dot(direction, product);
    if (!Number.isFinite(length)) break;
    left = 0;
    for (let k = 0; k < size; k++) {
      x[k] = x[k]! + length * direction[k]!;
      const rest = residual[k]! - length * product[k]!;
      residual[k] = rest;
      left += Math.abs(rest);
    }
    last = now;
  }
  return left;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
}

/** Sum of the magnitudes. */
export function magnitude(a: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += Math.abs(a[k]!);
  return sum;
}

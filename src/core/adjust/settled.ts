import { cholesky, type LeastSquaresProblem, solveLower, solveLowerTransposed } from '../least-squares';
import type { CellNormals } from '../scanned';

const MOST_STEPS = 8;
/** A step that changes the predictions by no more than this in all, in sigmas, is the last. */
const SMALL = 0.02;
/** The same where millimetres do: many cells make a sigma far less than one. */
export const ROUGHLY = 10;

/**
 * The cells' normal equations where the whole adjustment settles: Gauss–Newton on the normal equations of cells, readings
 * and priors together, so that cells far off, judged anew at each step, count for less. Where readings and cells leave
 * something open, the equations at the start.
 * @param direct readings and priors, without the cells
 * @param p number of parameters; standoffs come after them
 * @param small change of the predictions, in sigmas, that ends it
 */
export function settled(
  direct: LeastSquaresProblem,
  p: number,
  cellsAt: (values: Float64Array, robust: boolean) => CellNormals,
  small = SMALL,
): CellNormals {
  let x = Float64Array.from(direct.start);
  const n = x.length;
  let cells = cellsAt(x.slice(0, p), false);
  for (let step = 0; step < MOST_STEPS; step++) {
    const { misfit, jacobian } = direct.evaluate(x);
    const normal = new Float64Array(n * n);
    const right = new Float64Array(n);
    for (let i = 0; i < p; i++) {
      right[i] = cells.right[i]!;
      for (let j = 0; j <= i; j++) normal[i * n + j] = cells.normal[i * p + j]!;
    }
    jacobian.forEach((row, r) => {
      for (let i = 0; i < n; i++) {
        const entry = row[i]!;
        if (entry === 0) continue;
        right[i]! += entry * misfit[r]!;
        for (let j = 0; j <= i; j++) normal[i * n + j]! += entry * row[j]!;
      }
    });
    const scale = Float64Array.from({ length: n }, (_, i) => Math.sqrt(normal[i * n + i]!) || 1);
    for (let i = 0; i < n; i++) {
      right[i]! /= scale[i]!;
      for (let j = 0; j <= i; j++) normal[i * n + j]! /= scale[i]! * scale[j]!;
    }
    const lower = cholesky(normal, n);
    if (lower === null) return cells;
    const half = solveLower(lower, n, right);
    const change = Math.sqrt(half.reduce((sum, each) => sum + each * each, 0));
    const delta = solveLowerTransposed(lower, n, half);
    x = x.map((value, j) => value + delta[j]! / scale[j]!);
    if (!x.every(Number.isFinite)) return cells;
    cells = cellsAt(x.slice(0, p), true);
    if (step > 0 && change < small) break;
  }
  return cells;
}

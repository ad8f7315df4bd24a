import type { Matrix } from 'ml-matrix';
import { columnLengths, type Factored, factor } from './linear';
import type { Evaluation, LeastSquaresProblem } from './problem';

export interface LeastSquaresSolution extends Evaluation {
  /** adjusted unknowns, length n; misfit and Jacobian are those at x */
  x: Float64Array;
  /** (JᵀJ)⁻¹, n × n: the covariance for unit weight */
  cofactors: Matrix;
  /** redundancy number of each row, 0 … 1; they sum to `dof` (Baarda 1968) */
  redundancy: Float64Array;
  /** m rows of n: orthonormal columns Q spanning the Jacobian's range; the residual cofactors are I − Q Qᵀ */
  orthogonal: Float64Array[];
  dof: number;
  /** estimated standard deviation of unit weight; null where dof is 0 */
  s0: number | null;
  iterations: number;
  converged: boolean;
}

export type LeastSquaresOutcome =
  | { ok: true; solution: LeastSquaresSolution }
  | { ok: false; reason: string /** unit vectors the data say nothing about */; nullSpace: Float64Array[] };

export interface LeastSquaresOptions {
  maxIterations?: number;
  /** stop when a step changes the predictions by less than this, relative to the misfit and to the whole signal */
  tolerance?: number;
}

const TOLERANCE = 1e-10;
const SIGNAL_FLOOR = 1e-15;
/** A step that changes the predictions by less than this of the misfit changes the sum of squares by rounding alone. */
const ROUNDING = 1e-7;

/** Damping grows tenfold from attempt to attempt: after these the step is too short to matter. */
const MOST_ATTEMPTS = 16;
/** A step is taken when it lowers the sum of squares by at least this share of what the linear model promises. */
const LEAST_GAIN = 0.1;

/**
 * Gauss–Newton; when a full step does not lower the sum of squares as it should, damped by Levenberg–Marquardt with the
 * column-scaled diagonal (Nocedal and Wright, Numerical Optimization, 2nd ed. 2006, 10.3) until one does.
 * On a linear problem the second pass is one step of iterative refinement. Never throws on data; a rank-deficient
 * problem is refused with the directions that are missing.
 */
export function solveLeastSquares(
  problem: LeastSquaresProblem,
  { maxIterations = 100, tolerance = TOLERANCE }: LeastSquaresOptions = {},
): LeastSquaresOutcome {
  let x = Float64Array.from(problem.start);
  let { misfit, jacobian } = problem.evaluate(x);
  let cost = sumOfSquares(misfit);
  if (!Number.isFinite(cost)) return refused('the starting values give no finite prediction', []);
  let damping = 0;
  let iterations = 0;
  let converged = false;

  while (iterations < maxIterations && !converged) {
    iterations++;
    const plain = factor(jacobian, x.length);
    if (plain.nullSpace.length > 0 && damping === 0) {
      if (iterations === 1) return refused('the data do not determine every unknown', plain.nullSpace);
      damping = 1e-6;
    }
    let accepted = false;
    for (let attempt = 0; attempt < MOST_ATTEMPTS && !accepted && !converged; attempt++) {
      const step = damping === 0 ? plain.step(misfit) : dampedStep(jacobian, misfit, x.length, damping);
      const change = predictedChange(jacobian, step);
      const floor = SIGNAL_FLOOR * predictedChange(jacobian, x);
      const candidate = x.map((value, j) => value + step[j]!);
      const next = problem.evaluate(candidate);
      const nextCost = sumOfSquares(next.misfit);
      const settled = change <= Math.max(tolerance, ROUNDING) * Math.sqrt(cost) + floor;
      if (nextCost <= cost && (settled || cost - nextCost >= LEAST_GAIN * change * change)) {
        converged = change <= tolerance * Math.sqrt(nextCost) + floor;
        x = candidate;
        ({ misfit, jacobian } = next);
        cost = nextCost;
        damping = damping < 1e-7 ? 0 : damping / 10;
        accepted = true;
      } else {
        // A rise by rounding alone, at the bottom, is convergence.
        converged = settled;
        damping = damping === 0 ? 1e-3 : damping * 10;
      }
    }
    if (!accepted) break;
  }

  const factored = factor(jacobian, x.length);
  if (factored.nullSpace.length > 0) return refused('the data do not determine every unknown', factored.nullSpace);
  return { ok: true, solution: summary(x, { misfit, jacobian }, factored, iterations, converged) };
}

function summary(
  x: Float64Array,
  { misfit, jacobian }: Evaluation,
  factored: Factored,
  iterations: number,
  converged: boolean,
): LeastSquaresSolution {
  const orthogonal = factored.orthogonal();
  const dof = misfit.length - x.length;
  return {
    x,
    misfit,
    jacobian,
    cofactors: factored.cofactors(),
    redundancy: Float64Array.from(orthogonal, (row) => Math.max(0, 1 - sumOfSquares(row))),
    orthogonal,
    dof,
    s0: dof > 0 ? Math.sqrt(sumOfSquares(misfit) / dof) : null,
    iterations,
    converged,
  };
}

/** Levenberg–Marquardt step from the stacked system [J; √λ D], D the column lengths. */
function dampedStep(jacobian: Float64Array[], misfit: Float64Array, n: number, damping: number): Float64Array {
  const stacked = [...jacobian];
  columnLengths(jacobian, n).forEach((length, j) => {
    const row = new Float64Array(n);
    row[j] = Math.sqrt(damping) * (length || 1);
    stacked.push(row);
  });
  const padded = new Float64Array(misfit.length + n);
  padded.set(misfit);
  return factor(stacked, n).step(padded);
}

function predictedChange(jacobian: Float64Array[], step: Float64Array): number {
  let sum = 0;
  for (const row of jacobian) {
    let change = 0;
    for (let j = 0; j < step.length; j++) change += row[j]! * step[j]!;
    sum += change * change;
  }
  return Math.sqrt(sum);
}

function sumOfSquares(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]! * values[i]!;
  return sum;
}

const refused = (reason: string, nullSpace: Float64Array[]): LeastSquaresOutcome => ({ ok: false, reason, nullSpace });

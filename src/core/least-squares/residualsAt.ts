import { factor } from './linear';
import type { LeastSquaresProblem } from './problem';

/**
 * Residuals of the problem linearised at x, every row included, and the rows of Q behind their cofactors I − Q Qᵀ.
 * The problem must be of full rank there.
 */
export function residualsAt(
  problem: LeastSquaresProblem,
  x: Float64Array,
): { misfit: Float64Array; orthogonal: Float64Array[] } {
  const { misfit, jacobian } = problem.evaluate(x);
  const factored = factor(jacobian, x.length);
  const step = factored.step(misfit);
  return {
    misfit: misfit.map((value, i) => {
      const row = jacobian[i]!;
      let left = value;
      for (let j = 0; j < step.length; j++) left -= row[j]! * step[j]!;
      return left;
    }),
    orthogonal: factored.orthogonal(),
  };
}

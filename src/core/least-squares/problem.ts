/** A weighted least-squares problem, whitened: every row divided by its standard deviation. */
export interface LeastSquaresProblem {
  start: ArrayLike<number>;
  /** @param x values of the n unknowns */
  evaluate(x: Float64Array): Evaluation;
}

export interface Evaluation {
  /** (observed − predicted)/σ, length m */
  misfit: Float64Array;
  /** derivatives of predicted/σ, m rows of n */
  jacobian: Float64Array[];
}

/** The same problem with some rows left out, and a new start where one is given. */
export function withoutRows(
  problem: LeastSquaresProblem,
  left: ReadonlySet<number>,
  start: ArrayLike<number> = problem.start,
): LeastSquaresProblem {
  return {
    start,
    evaluate(x) {
      const { misfit, jacobian } = problem.evaluate(x);
      const kept = (_: unknown, i: number): boolean => !left.has(i);
      return { misfit: misfit.filter(kept), jacobian: jacobian.filter(kept) };
    },
  };
}

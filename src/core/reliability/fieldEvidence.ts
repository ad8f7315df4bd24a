import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { LeastSquaresSolution } from '../least-squares';

export interface FieldEvidence {
  /** twice the logarithm of the likelihood ratio, with the field to without, averaged over the sizes */
  twiceLog: number;
  /** the likeliest of the sizes */
  size: number;
}

/**
 * How much likelier the rows are with further coefficients B c, c normal with mean 0 and standard deviation s, than
 * without: uᵀM⁻¹u − ln det M for u = s Bᵀv, M = I + s² BᵀPB, P = I − QQᵀ (the coefficients integrated out: Rasmussen and
 * Williams, Gaussian Processes for Machine Learning, 2006, 5.4.1). Without a field the ratio exceeds K at most once in K
 * times (Markov's inequality), whatever the rows.
 * @param columns B, whitened, one row per row of the solution
 * @param sizes values of s
 */
export function fieldEvidence(
  { misfit, orthogonal, x }: LeastSquaresSolution,
  columns: readonly Float64Array[],
  sizes: readonly number[],
): FieldEvidence {
  const q = columns[0]?.length ?? 0;
  const seen = new Float64Array(q);
  const spread = Array.from({ length: q }, () => new Float64Array(q));
  const shared = Array.from(x, () => new Float64Array(q));
  columns.forEach((column, i) => {
    const touched = Array.from(column.keys()).filter((a) => column[a] !== 0);
    for (const a of touched) {
      seen[a]! += column[a]! * misfit[i]!;
      for (const b of touched) spread[a]![b]! += column[a]! * column[b]!;
      for (let k = 0; k < x.length; k++) shared[k]![a]! += orthogonal[i]![k]! * column[a]!;
    }
  });
  for (const line of shared) {
    for (let a = 0; a < q; a++) for (let b = 0; b < q; b++) spread[a]![b]! -= line[a]! * line[b]!;
  }
  const logs = sizes.map((size) => {
    const m = new Matrix(spread).mul(size * size).add(Matrix.eye(q));
    const cholesky = new CholeskyDecomposition(m);
    const lower = cholesky.lowerTriangularMatrix;
    const right = Matrix.columnVector(seen).mul(size);
    const solved = cholesky.solve(right);
    let twice = 0;
    for (let a = 0; a < q; a++) twice += right.get(a, 0) * solved.get(a, 0) - 2 * Math.log(lower.get(a, a));
    return twice;
  });
  const best = Math.max(...logs);
  const mean = logs.reduce((sum, each) => sum + Math.exp((each - best) / 2), 0) / logs.length;
  return { twiceLog: best + 2 * Math.log(mean), size: sizes[logs.indexOf(best)]! };
}

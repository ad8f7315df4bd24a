import type { LeastSquaresSolution } from '../least-squares';
import { chiSquareTail } from './distributions';

/** How the residuals of a group of rows compare with the sigmas that they were given. */
export interface GroupTest {
  /** sum of the rows' redundancy numbers: what the sum of squares should be on average */
  redundancy: number;
  /** √(sum of squares / redundancy): the group's sigmas times this agree with its residuals; null without redundancy */
  factor: number | null;
  /** probability that the given sigmas leave residuals as large as these or larger */
  probability: number;
}

/** Below this redundancy a group says nothing about its sigmas. */
const LEAST_REDUNDANCY = 0.5;

/**
 * Chi-square test of a group of residuals, and the variance component that makes it fit (Förstner 1979: vᵀv over the
 * sum of redundancy numbers). The residual cofactors of the group, P = I − Q Qᵀ there, have eigenvalues between 0 and 1,
 * so vᵀv is scaled to the chi-square with the same mean and variance (Satterthwaite 1946); over all rows this is the
 * exact global test of the variance of unit weight with dof degrees of freedom.
 */
export function groupTest({ misfit, orthogonal, x }: LeastSquaresSolution, rows: readonly number[]): GroupTest {
  const n = x.length;
  let squares = 0;
  const gram = Array.from({ length: n }, () => new Float64Array(n));
  for (const row of rows) {
    squares += misfit[row]! ** 2;
    const q = orthogonal[row]!;
    for (let i = 0; i < n; i++) {
      const qi = q[i]!;
      const line = gram[i]!;
      for (let j = 0; j <= i; j++) line[j]! += qi * q[j]!;
    }
  }
  let trace = 0;
  let traceOfSquare = 0;
  gram.forEach((line, i) => {
    trace += line[i]!;
    for (let j = 0; j < i; j++) traceOfSquare += 2 * line[j]! ** 2;
    traceOfSquare += line[i]! ** 2;
  });
  const mean = rows.length - trace;
  if (mean < LEAST_REDUNDANCY) return { redundancy: Math.max(0, mean), factor: null, probability: 1 };
  // Never more degrees of freedom than rows (Cauchy–Schwarz), whatever rounding leaves of the difference.
  const halfVariance = Math.max(rows.length - 2 * trace + traceOfSquare, (mean * mean) / rows.length);
  return {
    redundancy: mean,
    factor: Math.sqrt(squares / mean),
    probability: chiSquareTail((squares * mean) / halfVariance, (mean * mean) / halfVariance),
  };
}

import { Matrix, SVD } from 'ml-matrix';
import { applyTransposed, type Householder, householder, orthogonalRows, solveUpper } from './householder';

/** Below this ratio to the largest, a singular value of the scaled Jacobian counts as zero. */
const RANK_TOLERANCE = 1e-11;
/** With every diagonal entry of R above this the scaled Jacobian is of full rank without a closer look. */
const PLAINLY_FULL = 1e-9;

/** A whitened Jacobian in factored form: J = Q R D, D the diagonal of column lengths. */
export interface Factored {
  rank: number;
  /** directions in parameter space that no row touches, scaled to unit length; empty at full rank */
  nullSpace: Float64Array[];
  /** δ that minimises |J δ − misfit|; only at full rank */
  step(misfit: Float64Array): Float64Array;
  /** (JᵀJ)⁻¹; only at full rank */
  cofactors(): Matrix;
  /** rows of Q: their products are the entries of the hat matrix; only at full rank */
  orthogonal(): Float64Array[];
}

/**
 * QR of a column-scaled Jacobian: no normal equations, so accuracy goes with the condition number and not with its
 * square. Where R is nearly singular its singular values tell the rank.
 * @param jacobian m rows of n, each divided by its sigma
 * @param n unknowns
 */
export function factor(jacobian: readonly Float64Array[], n: number): Factored {
  const lengths = columnLengths(jacobian, n).map((length) => length || 1);
  // QR wants at least as many rows as columns; rows of zeros change nothing.
  const m = Math.max(jacobian.length, n);
  const columns = new Float64Array(m * n);
  jacobian.forEach((row, i) => {
    for (let j = 0; j < n; j++) columns[j * m + i] = row[j]! / lengths[j]!;
  });
  const qr = householder(columns, m, n);
  const nullSpace = qr.diagonal.every((entry) => Math.abs(entry) > PLAINLY_FULL) ? [] : nullSpaceOf(qr, lengths);

  return {
    rank: n - nullSpace.length,
    nullSpace,
    step(misfit) {
      const right = new Float64Array(m);
      right.set(misfit);
      applyTransposed(qr, right);
      return solveUpper(qr, right).map((entry, j) => entry / lengths[j]!);
    },
    cofactors: () => cofactorsOf(qr, lengths),
    orthogonal: () => orthogonalRows(qr).slice(0, jacobian.length),
  };
}

/** Euclidean length of each column. */
export function columnLengths(jacobian: readonly Float64Array[], n: number): Float64Array {
  const squares = new Float64Array(n);
  for (const row of jacobian) for (let j = 0; j < n; j++) squares[j]! += row[j]! * row[j]!;
  return squares.map(Math.sqrt);
}

function nullSpaceOf({ m, n, columns, diagonal }: Householder, lengths: Float64Array): Float64Array[] {
  const r = Matrix.zeros(n, n);
  for (let j = 0; j < n; j++) {
    for (let i = 0; i < j; i++) r.set(i, j, columns[j * m + i]!);
    r.set(j, j, diagonal[j]!);
  }
  const svd = new SVD(r, { autoTranspose: true });
  const largest = svd.diagonal[0] || 1;
  const v = svd.rightSingularVectors;
  const vectors: Float64Array[] = [];
  svd.diagonal.forEach((singular, k) => {
    if (singular > RANK_TOLERANCE * largest) return;
    const vector = Float64Array.from(lengths, (length, j) => v.get(j, k) / length);
    const size = Math.hypot(...vector);
    vectors.push(vector.map((entry) => entry / size));
  });
  return vectors;
}

/** D⁻¹ R⁻¹ R⁻ᵀ D⁻¹ */
function cofactorsOf(qr: Householder, lengths: Float64Array): Matrix {
  const { n } = qr;
  const inverse = Array.from({ length: n }, (_, j) => {
    const unit = new Float64Array(n);
    unit[j] = 1;
    return solveUpper(qr, unit);
  });
  const cofactors = Matrix.zeros(n, n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      // Column k of R⁻¹ ends at row k.
      for (let k = i; k < n; k++) sum += inverse[k]![i]! * inverse[k]![j]!;
      const entry = sum / (lengths[i]! * lengths[j]!);
      cofactors.set(i, j, entry);
      cofactors.set(j, i, entry);
    }
  }
  return cofactors;
}

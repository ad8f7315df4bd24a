import { Matrix, QrDecomposition, SVD } from 'ml-matrix';

/** Below this ratio to the largest, a singular value of the scaled Jacobian counts as zero. */
const RANK_TOLERANCE = 1e-11;

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
 * Householder QR of a column-scaled Jacobian (Golub and Van Loan, Matrix Computations, 4th ed., 5.2 and 5.3): no normal
 * equations, so accuracy goes with the condition number and not with its square.
 * @param jacobian m rows of n, each divided by its sigma
 * @param n unknowns
 */
export function factor(jacobian: readonly Float64Array[], n: number): Factored {
  const m = jacobian.length;
  const lengths = columnLengths(jacobian, n).map((length) => length || 1);
  // QR wants at least as many rows as columns; rows of zeros change nothing.
  const scaled = Matrix.zeros(Math.max(m, n), n);
  jacobian.forEach((row, i) => {
    for (let j = 0; j < n; j++) scaled.set(i, j, row[j]! / lengths[j]!);
  });
  const qr = new QrDecomposition(scaled);
  const r = qr.upperTriangularMatrix;
  let least = Number.POSITIVE_INFINITY;
  for (let j = 0; j < n; j++) least = Math.min(least, Math.abs(r.get(j, j)));
  const nullSpace = least > 1e-9 ? [] : nullSpaceOf(r, lengths);

  return {
    rank: n - nullSpace.length,
    nullSpace,
    step(misfit) {
      const right = Matrix.zeros(scaled.rows, 1);
      for (let i = 0; i < m; i++) right.set(i, 0, misfit[i]!);
      const solution = qr.solve(right);
      return Float64Array.from(lengths, (length, j) => solution.get(j, 0) / length);
    },
    cofactors() {
      const inverseR = upperInverse(r);
      const product = inverseR.mmul(inverseR.transpose());
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) product.set(i, j, product.get(i, j) / (lengths[i]! * lengths[j]!));
      }
      return product;
    },
    orthogonal() {
      const q = qr.orthogonalMatrix;
      return jacobian.map((_, i) => Float64Array.from(q.getRow(i)));
    },
  };
}

/** Euclidean length of each column. */
export function columnLengths(jacobian: readonly Float64Array[], n: number): Float64Array {
  const squares = new Float64Array(n);
  for (const row of jacobian) for (let j = 0; j < n; j++) squares[j]! += row[j]! * row[j]!;
  return squares.map(Math.sqrt);
}

function nullSpaceOf(r: Matrix, lengths: Float64Array): Float64Array[] {
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

function upperInverse(r: Matrix): Matrix {
  const n = r.columns;
  const inverse = Matrix.zeros(n, n);
  for (let j = 0; j < n; j++) {
    for (let i = j; i >= 0; i--) {
      let sum = i === j ? 1 : 0;
      for (let k = i + 1; k <= j; k++) sum -= r.get(i, k) * inverse.get(k, j);
      inverse.set(i, j, sum / r.get(i, i));
    }
  }
  return inverse;
}

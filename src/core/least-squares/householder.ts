/** A matrix A (m × n, m ≥ n) as Q R by Householder reflections. */
export interface Householder {
  m: number;
  n: number;
  /** column after column: the reflections below and on the diagonal, R above it */
  columns: Float64Array;
  /** diagonal of R */
  diagonal: Float64Array;
}

/**
 * Householder QR (Golub and Van Loan, Matrix Computations, 4th ed. 2013, algorithm 5.2.1), over columns that lie
 * together in memory.
 * @param columns A, column after column; overwritten
 */
export function householder(columns: Float64Array, m: number, n: number): Householder {
  const diagonal = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const from = k * m;
    let square = 0;
    for (let i = k; i < m; i++) square += columns[from + i]! * columns[from + i]!;
    if (square === 0) continue;
    const length = columns[from + k]! < 0 ? -Math.sqrt(square) : Math.sqrt(square);
    for (let i = k; i < m; i++) columns[from + i]! /= length;
    columns[from + k]! += 1;
    diagonal[k] = -length;
    for (let j = k + 1; j < n; j++) reflect(columns, from, k, columns, j * m, m);
  }
  return { m, n, columns, diagonal };
}

/** Qᵀ b, in place: the first n entries belong to R. */
export function applyTransposed({ m, n, columns, diagonal }: Householder, b: Float64Array): void {
  for (let k = 0; k < n; k++) if (diagonal[k] !== 0) reflect(columns, k * m, k, b, 0, m);
}

/** The first n columns of Q, as m rows of n. */
export function orthogonalRows({ m, n, columns, diagonal }: Householder): Float64Array[] {
  const rows = Array.from({ length: m }, () => new Float64Array(n));
  const column = new Float64Array(m);
  for (let j = 0; j < n; j++) {
    column.fill(0);
    column[j] = 1;
    for (let k = j; k >= 0; k--) if (diagonal[k] !== 0) reflect(columns, k * m, k, column, 0, m);
    for (let i = 0; i < m; i++) rows[i]![j] = column[i]!;
  }
  return rows;
}

/** Solves R x = b. */
export function solveUpper({ m, n, columns, diagonal }: Householder, b: Float64Array): Float64Array {
  const x = Float64Array.from(b.subarray(0, n));
  for (let k = n - 1; k >= 0; k--) {
    x[k]! /= diagonal[k]!;
    for (let i = 0; i < k; i++) x[i]! -= x[k]! * columns[k * m + i]!;
  }
  return x;
}

/** Applies the k-th reflection to a vector. */
function reflect(columns: Float64Array, from: number, k: number, target: Float64Array, to: number, m: number): void {
  let sum = 0;
  for (let i = k; i < m; i++) sum += columns[from + i]! * target[to + i]!;
  sum /= -columns[from + k]!;
  for (let i = k; i < m; i++) target[to + i]! += sum * columns[from + i]!;
}

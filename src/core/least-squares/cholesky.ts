/** Lower triangle L of A = L Lᵀ, n × n row after row; null where A is not positive definite. A is overwritten. */
export function cholesky(a: Float64Array, n: number): Float64Array | null {
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= a[i * n + k]! * a[j * n + k]!;
      if (i !== j) a[i * n + j] = sum / a[j * n + j]!;
      else if (!(sum > 0)) return null;
      else a[i * n + i] = Math.sqrt(sum);
    }
  }
  return a;
}

/** Solves L x = b in place. */
export function solveLower(l: Float64Array, n: number, b: Float64Array): Float64Array {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= l[i * n + k]! * b[k]!;
    b[i] = sum / l[i * n + i]!;
  }
  return b;
}

/** Solves Lᵀ x = b in place. */
export function solveLowerTransposed(l: Float64Array, n: number, b: Float64Array): Float64Array {
  for (let i = n - 1; i >= 0; i--) {
    b[i]! /= l[i * n + i]!;
    for (let k = 0; k < i; k++) b[k]! -= l[i * n + k]! * b[i]!;
  }
  return b;
}

/**
 * Below this share of its scaled diagonal what is left of a normal matrix is rounding: it would weigh a target that is
 * rounding too, and say that the readings disagree.
 */
const RANK_TOLERANCE = 1e-8;

/**
 * Normal equations N δ = g, N n × n of any rank, as the fewest whitened rows with the same: R δ = t with RᵀR = N and
 * Rᵀt = g, by Cholesky's factorisation with pivots of the matrix scaled to a unit diagonal (Higham, Accuracy and
 * Stability of Numerical Algorithms, 2nd ed. 2002, 10.3).
 */
export function whitenedRows(
  normal: Float64Array,
  right: Float64Array,
  n: number,
): { rows: Float64Array[]; target: Float64Array } {
  const scale = Float64Array.from({ length: n }, (_, i) => Math.sqrt(normal[i * n + i]!) || 1);
  const left = Float64Array.from({ length: n }, (_, i) => (normal[i * n + i]! > 0 ? 1 : 0));
  const order = Int32Array.from({ length: n }, (_, i) => i);
  const rows: Float64Array[] = [];
  const target: number[] = [];
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (left[order[i]!]! > left[order[best]!]!) best = i;
    const pivot = order[best]!;
    order[best] = order[k]!;
    order[k] = pivot;
    if (left[pivot]! <= RANK_TOLERANCE) break;
    const root = Math.sqrt(left[pivot]!);
    const row = new Float64Array(n);
    row[pivot] = root;
    for (let i = k + 1; i < n; i++) {
      const column = order[i]!;
      let sum = normal[pivot * n + column]! / (scale[pivot]! * scale[column]!);
      for (let r = 0; r < k; r++) sum -= rows[r]![pivot]! * rows[r]![column]!;
      row[column] = sum / root;
      left[column]! -= row[column]! ** 2;
    }
    let sum = right[pivot]! / scale[pivot]!;
    for (let r = 0; r < k; r++) sum -= rows[r]![pivot]! * target[r]!;
    target.push(sum / root);
    rows.push(row);
  }
  for (const row of rows) for (let i = 0; i < n; i++) row[i]! *= scale[i]!;
  return { rows, target: Float64Array.from(target) };
}

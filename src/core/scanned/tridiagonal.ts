/** A symmetric matrix S as U T Uᵀ, T with three diagonals, U orthogonal, and a vector in U's frame. */
export interface Tridiagonal {
  diagonal: Float64Array;
  /** beside the diagonal, one fewer */
  beside: Float64Array;
  /** Uᵀ v */
  turned: Float64Array;
}

/**
 * Brings a symmetric matrix to three diagonals by Householder's reflections (Golub and Van Loan, Matrix Computations, 8.3;
 * from memory): 4/3 q³ operations, once, after which S + λ I is solved in O(q) for any λ.
 * @param s q × q, row by row, its lower triangle used; is written over
 * @param v q values
 */
export function tridiagonal(s: Float64Array, v: Float64Array, q: number): Tridiagonal {
  const turned = v.slice();
  const diagonal = new Float64Array(q);
  const beside = new Float64Array(Math.max(0, q - 1));
  const u = new Float64Array(q);
  const w = new Float64Array(q);
  for (let k = 0; k + 1 < q; k++) {
    let squares = 0;
    for (let i = k + 1; i < q; i++) {
      u[i] = s[i * q + k]!;
      squares += u[i]! ** 2;
    }
    const first = u[k + 1]!;
    const length = Math.sqrt(squares);
    const below = squares - first * first;
    if (k + 2 === q || !(below > 0)) {
      beside[k] = first;
      continue;
    }
    beside[k] = first > 0 ? -length : length;
    u[k + 1] = first - beside[k]!;
    const scale = 2 / (below + u[k + 1]! ** 2);
    reflect(s, q, k + 1, u, w, scale);
    let along = 0;
    for (let i = k + 1; i < q; i++) along += u[i]! * turned[i]!;
    along *= scale;
    for (let i = k + 1; i < q; i++) turned[i]! -= along * u[i]!;
  }
  for (let k = 0; k < q; k++) diagonal[k] = s[k * q + k]!;
  return { diagonal, beside, turned };
}

/** H S H of the rows and columns from `from` on, H = I − scale u uᵀ; `w` is for working. */
function reflect(s: Float64Array, q: number, from: number, u: Float64Array, w: Float64Array, scale: number): void {
  w.fill(0, from);
  for (let i = from; i < q; i++) {
    const row = i * q;
    const ui = u[i]!;
    let sum = s[row + i]! * ui;
    for (let j = from; j < i; j++) {
      const each = s[row + j]!;
      sum += each * u[j]!;
      w[j]! += each * ui;
    }
    w[i]! += sum;
  }
  let along = 0;
  for (let i = from; i < q; i++) {
    w[i]! *= scale;
    along += w[i]! * u[i]!;
  }
  along *= scale / 2;
  for (let i = from; i < q; i++) w[i]! -= along * u[i]!;
  for (let i = from; i < q; i++) {
    const row = i * q;
    const [ui, wi] = [u[i]!, w[i]!];
    for (let j = from; j <= i; j++) s[row + j]! -= ui * w[j]! + wi * u[j]!;
  }
}

/** What a likelihood needs of M = S + λ I and of v. */
export interface Shifted {
  /** log of M's determinant */
  logDeterminant: number;
  /** trace of M⁻¹ */
  inverseTrace: number;
  /** vᵀ M⁻¹ v */
  explained: number;
  /** |M⁻¹ v|² */
  squares: number;
}

/** In O(q), by the factor L D Lᵀ of the three diagonals; null where M is not positive definite. */
export function shifted({ diagonal, beside, turned }: Tridiagonal, lambda: number): Shifted | null {
  const q = diagonal.length;
  const pivots = new Float64Array(q);
  const solved = new Float64Array(q);
  let [logDeterminant, inverseTrace, explained] = [0, 0, 0];
  /** of a pivot by λ: the logarithm of the determinant has the inverse's trace for its derivative */
  let slope = 1;
  for (let k = 0; k < q; k++) {
    let pivot = diagonal[k]! + lambda;
    solved[k] = turned[k]!;
    if (k > 0) {
      const factor = beside[k - 1]! / pivots[k - 1]!;
      pivot -= factor * beside[k - 1]!;
      solved[k]! -= factor * solved[k - 1]!;
      slope = 1 + factor * factor * slope;
    }
    if (!(pivot > 0)) return null;
    pivots[k] = pivot;
    logDeterminant += Math.log(pivot);
    inverseTrace += slope / pivot;
    explained += solved[k]! ** 2 / pivot;
  }
  let [squares, last] = [0, 0];
  for (let k = q - 1; k >= 0; k--) {
    last = (solved[k]! - (k + 1 < q ? beside[k]! * last : 0)) / pivots[k]!;
    squares += last * last;
  }
  return { logDeterminant, inverseTrace, explained, squares };
}

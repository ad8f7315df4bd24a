import { unevenBasis } from '../alcove';
import type { WallName } from '../job-file';
import type { Cells } from './scanInUse';
import { shifted, type Tridiagonal, tridiagonal } from './tridiagonal';

/** Lengths of spline intervals, and prior standard deviations of their coefficients, that are tried, mm. */
const INTERVALS = [450, 300, 200];
const SIZES = [0.25, 0.5, 1, 2, 4, 8];
/** A spline must make the cells a thousand times likelier than the wall without. */
const CALL = 2 * Math.log(1000);
/** Fewer cells tell nothing of a wall's shape beyond plane, twist and bow. */
const LEAST_CELLS = 40;
/** A cell's standard deviation is never taken for less than this share of what it states. */
const LEAST_FACTOR = 0.5;

/** The likeliest shape of a wall for its cells. */
export interface Smoothing {
  /** null: plane, twist and bow do */
  spline: { interval: number; sd: number } | null;
  /** what the cells' own standard deviations are to be multiplied by, as their residuals show */
  factor: number;
}

/**
 * How wavy a wall is and how noisy its cells, by restricted maximum likelihood (Patterson and Thompson 1971; for splines
 * Wahba 1985; from memory): cells y = P β + B c + e with β free, c ~ N(0, τ² I), e ~ N(0, φ sd²). For each interval length
 * and τ tried, φ is the likeliest; the likeliest of all stands, if it is a thousand times likelier than no spline.
 */
export function smoothingOf(cells: Cells, wall: WallName, at: [number, number], height: [number, number]): Smoothing {
  const n = cells.a.length;
  const plain = plainFit(cells);
  if (n < LEAST_CELLS) return { spline: null, factor: factorOf(plain.squares, Math.max(1, n - TERMS)) };
  const without = (n - TERMS) * Math.log(plain.squares / (n - TERMS));
  let best: { value: number; spline: Smoothing['spline']; factor: number } = {
    value: without - CALL,
    spline: null,
    factor: factorOf(plain.squares, n - TERMS),
  };
  // Choices differ little in φ: each is begun at the one before.
  let phi = 1;
  for (const interval of INTERVALS) {
    const basis = unevenBasis({ wall, at, height, interval });
    const projected = projectedBasis(cells, plain, basis);
    for (const size of SIZES) {
      const tried = evidence(projected, plain.squares, n, size, phi);
      if (tried === null) continue;
      phi = tried.phi;
      if (tried.value >= best.value) continue;
      best = { value: tried.value, spline: { interval, sd: size }, factor: Math.max(LEAST_FACTOR, Math.sqrt(phi)) };
    }
  }
  return { spline: best.spline, factor: best.factor };
}

/** The same factor for a surface that has no spline. */
export function plainFactor(cells: Cells): number {
  return factorOf(plainFit(cells).squares, Math.max(1, cells.a.length - TERMS));
}

const factorOf = (squares: number, dof: number): number => Math.max(LEAST_FACTOR, Math.sqrt(squares / dof));

const TERMS = 6;

interface PlainFit {
  /** whitened P, n rows of 6, orthonormal columns */
  orthonormal: Float64Array[];
  /** whitened residuals of the fit, and their squares' sum */
  residual: Float64Array;
  squares: number;
}

/** Weighted least squares by modified Gram–Schmidt over 1, a, b, ab, a², b² in m. */
function plainFit({ a, b, value, sd }: Cells): PlainFit {
  const n = a.length;
  const middle = [mean(a), mean(b)] as const;
  const columns = Array.from({ length: TERMS }, (_, t) =>
    Float64Array.from({ length: n }, (_, i) => {
      const [u, v] = [(a[i]! - middle[0]) * 1e-3, (b[i]! - middle[1]) * 1e-3];
      return [1, u, v, u * v, u * u, v * v][t]! / sd[i]!;
    }),
  );
  const residual = Float64Array.from(value, (each, i) => each / sd[i]!);
  const orthonormal: Float64Array[] = [];
  for (const column of columns) {
    for (let pass = 0; pass < 2; pass++) for (const q of orthonormal) subtractAlong(column, q);
    const length = Math.sqrt(inner(column, column));
    if (length < 1e-9) continue;
    for (let i = 0; i < n; i++) column[i]! /= length;
    orthonormal.push(column);
  }
  for (let pass = 0; pass < 2; pass++) for (const q of orthonormal) subtractAlong(residual, q);
  return { orthonormal, residual, squares: inner(residual, residual) };
}

/** BᵀW½ (I − QQᵀ) W½B, brought to three diagonals, with BᵀW½ residual. */
function projectedBasis(
  { a, b, sd }: Cells,
  { orthonormal, residual }: PlainFit,
  basis: ReturnType<typeof unevenBasis>,
): Tridiagonal {
  const q = basis.count;
  const spread = new Float64Array(q * q);
  const seen = new Float64Array(q);
  const shared = orthonormal.map(() => new Float64Array(q));
  const line = new Float64Array(q);
  const [touched, touch] = [new Int32Array(q), new Float64Array(q)];
  for (let i = 0; i < a.length; i++) {
    basis.fill(line, 0, a[i]!, b[i]!, 0, 0);
    let used = 0;
    for (let k = 0; k < q; k++) {
      if (line[k] === 0) continue;
      touched[used] = k;
      touch[used++] = line[k]! / sd[i]!;
    }
    addRow(touched, touch, used, residual[i]!, spread, seen);
    for (let t = 0; t < shared.length; t++) {
      const [each, along] = [shared[t]!, orthonormal[t]![i]!];
      for (let s = 0; s < used; s++) each[touched[s]!]! += touch[s]! * along;
    }
  }
  for (const each of shared)
    for (let k = 0; k < q; k++) for (let l = 0; l <= k; l++) spread[k * q + l]! -= each[k]! * each[l]!;
  return tridiagonal(spread, seen, q);
}

/** Adds one cell's row, `used` entries at the columns `touched` in rising order, to the lower triangle and the right side. */
function addRow(
  touched: Int32Array,
  touch: Float64Array,
  used: number,
  off: number,
  spread: Float64Array,
  seen: Float64Array,
): void {
  const q = seen.length;
  for (let s = 0; s < used; s++) {
    const row = touched[s]! * q;
    const at = touch[s]!;
    seen[touched[s]!]! += at * off;
    for (let t = 0; t <= s; t++) spread[row + touched[t]!]! += at * touch[t]!;
  }
}

/** φ is found where it moves by less than this share of itself from one round to the next. */
const SETTLED = 1e-4;
const ROUNDS = 50;

/**
 * −2 log of the restricted likelihood, φ at its best, but for a constant that no choice changes. At its best φ is what the
 * residuals' squares come to for each degree of freedom that the spline leaves (Schall 1991; here from the likelihood's
 * own derivative).
 * @param start where φ is looked for first
 */
function evidence(
  projected: Tridiagonal,
  squares: number,
  n: number,
  size: number,
  start: number,
): { value: number; phi: number } | null {
  const q = projected.diagonal.length;
  let phi = start;
  for (let round = 0; ; round++) {
    const lambda = phi / size ** 2;
    const at = shifted(projected, lambda);
    if (at === null) return null;
    const residual = squares - at.explained - lambda * at.squares;
    const taken = q - lambda * at.inverseTrace;
    const next = Math.max(1e-9, residual) / (n - TERMS - taken);
    if (round === ROUNDS || Math.abs(next / phi - 1) < SETTLED) {
      const determinant = at.logDeterminant - q * Math.log(lambda);
      const value = (n - TERMS) * (Math.log(phi) - 1) + (squares - at.explained) / phi + determinant;
      return { value, phi };
    }
    phi = next;
  }
}

const mean = (values: Float64Array): number => values.reduce((sum, each) => sum + each, 0) / values.length;
const inner = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};
const subtractAlong = (target: Float64Array, q: Float64Array): void => {
  const along = inner(target, q);
  for (let i = 0; i < target.length; i++) target[i]! -= along * q[i]!;
};

import { Matrix, solve } from 'ml-matrix';

/** h = c0 + c1 a + c2 b + c3 ab + c4 a² + c5 b², lengths in m within, mm outside. */
export type Field = Float64Array;

export const fieldAt = (c: Field, a: number, b: number): number => {
  const u = a * 1e-3;
  const v = b * 1e-3;
  return 1e3 * (c[0]! + u * (c[1]! + c[3]! * v + c[4]! * u) + v * (c[2]! + c[5]! * v));
};

/** ∂h/∂a and ∂h/∂b */
export const fieldSlope = (c: Field, a: number, b: number): [number, number] => {
  const [u, v] = [a * 1e-3, b * 1e-3];
  return [c[1]! + c[3]! * v + 2 * c[4]! * u, c[2]! + c[3]! * u + 2 * c[5]! * v];
};

/** Tukey's biweight gives 95 % efficiency at this many standard deviations. */
const CUT = 4.685;
/** 1.4826 times the median of absolute deviations is a normal distribution's standard deviation. */
const NORMAL = 1.4826;

export interface RobustField {
  field: Field;
  /** spread of what was fitted about the field, mm */
  noise: number;
}

export interface RobustFieldOptions {
  /** farther from the field than this nothing counts, mm, narrowing from fit to fit */
  within: readonly number[];
  start: Field;
  /** spread that is taken at least, mm */
  leastNoise?: number;
  /** quadratic coefficients are held near 0 with this standard deviation, mm/m² */
  bowSd?: number;
}

/**
 * Height field through points with most of them right: iterated weighted least squares with Tukey's biweight (Beaton and
 * Tukey 1974), the spread from the median of absolute deviations; from a start that lies within the first reach.
 * Null where too few points are within reach.
 */
export function robustField(
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  h: ArrayLike<number>,
  { within, start, leastNoise = 0.3, bowSd = 20 }: RobustFieldOptions,
): RobustField | null {
  let field = start;
  let noise = leastNoise;
  for (const reach of within) {
    const used: number[] = [];
    const off: number[] = [];
    for (let i = 0; i < h.length; i++) {
      const misfit = h[i]! - fieldAt(field, a[i]!, b[i]!);
      if (Math.abs(misfit) > reach) continue;
      used.push(i);
      off.push(misfit);
    }
    if (used.length < 20) return null;
    noise = Math.max(leastNoise, NORMAL * median(off.map(Math.abs)));
    const cut = Math.min(reach, CUT * noise);
    const normal = Matrix.zeros(6, 6);
    const right = Matrix.zeros(6, 1);
    for (const [k, i] of used.entries()) {
      const t = off[k]! / cut;
      if (Math.abs(t) >= 1) continue;
      const weight = (1 - t * t) ** 2 / noise ** 2;
      const [u, v] = [a[i]! * 1e-3, b[i]! * 1e-3];
      const row = [1, u, v, u * v, u * u, v * v];
      for (let p = 0; p < 6; p++) {
        right.set(p, 0, right.get(p, 0) + weight * row[p]! * h[i]!);
        for (let q = 0; q <= p; q++) normal.set(p, q, normal.get(p, q) + weight * row[p]! * row[q]!);
      }
    }
    for (let p = 0; p < 6; p++) for (let q = 0; q < p; q++) normal.set(q, p, normal.get(p, q));
    for (let p = 3; p < 6; p++) normal.set(p, p, normal.get(p, p) + 1 / bowSd ** 2);
    for (let p = 0; p < 3; p++) normal.set(p, p, normal.get(p, p) + 1e-9);
    field = Float64Array.from(solve(normal, right).to1DArray(), (each) => each * 1e-3);
  }
  return { field, noise };
}

export function median(values: number[]): number {
  const sorted = Float64Array.from(values).sort();
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

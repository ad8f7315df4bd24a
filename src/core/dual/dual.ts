/**
 * A number that carries its partial derivatives with respect to the adjusted parameters: forward-mode automatic
 * differentiation (Griewank and Walther, Evaluating Derivatives, 2nd ed. 2008, ch. 3). The geometry that predicts a
 * reading or places a cut edge is written once, in these; its covariance follows without a second formula.
 */
export interface Dual {
  readonly value: number;
  /** d value / d parameter[i]; null stands for all zeros */
  readonly gradient: Float64Array | null;
}

export const constant = (value: number): Dual => ({ value, gradient: null });

/**
 * Chain rule: a value whose partial derivative with respect to each operand is given. Without derivatives only where
 * no operand has any.
 */
export function chain(value: number, partialA: number, a: Dual, partialB = 0, b: Dual | null = null): Dual {
  const ga = a.gradient;
  const gb = b === null ? null : b.gradient;
  const length = (ga ?? gb)?.length;
  if (length === undefined) return { value, gradient: null };
  const gradient = new Float64Array(length);
  if (ga !== null) for (let i = 0; i < length; i++) gradient[i] = partialA * ga[i]!;
  if (gb !== null) for (let i = 0; i < length; i++) gradient[i] = gradient[i]! + partialB * gb[i]!;
  return { value, gradient };
}

export const add = (a: Dual, b: Dual): Dual => chain(a.value + b.value, 1, a, 1, b);
export const subtract = (a: Dual, b: Dual): Dual => chain(a.value - b.value, 1, a, -1, b);
export const multiply = (a: Dual, b: Dual): Dual => chain(a.value * b.value, b.value, a, a.value, b);
export const divide = (a: Dual, b: Dual): Dual =>
  chain(a.value / b.value, 1 / b.value, a, -a.value / (b.value * b.value), b);
/** a + k */
export const shift = (a: Dual, k: number): Dual => ({ value: a.value + k, gradient: a.gradient });
/** k a */
export const scale = (a: Dual, k: number): Dual => chain(k * a.value, k, a);
export const negate = (a: Dual): Dual => scale(a, -1);

/** sqrt(a² + b²) */
export function hypotenuse(a: Dual, b: Dual): Dual {
  const length = Math.max(Math.hypot(a.value, b.value), 1e-12);
  return chain(length, a.value / length, a, b.value / length, b);
}

/** Angle of the vector (x, y), radians. */
export function arcTangent2(y: Dual, x: Dual): Dual {
  const square = Math.max(x.value * x.value + y.value * y.value, 1e-24);
  return chain(Math.atan2(y.value, x.value), x.value / square, y, -y.value / square, x);
}

/** The operand with the larger value, with that operand's derivatives. */
export const larger = (a: Dual, b: Dual): Dual => (b.value > a.value ? b : a);
export const smaller = (a: Dual, b: Dual): Dual => (b.value < a.value ? b : a);

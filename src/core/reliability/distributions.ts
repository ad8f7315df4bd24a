/*
 * Distribution functions from the regularized incomplete gamma and beta functions: series and continued fractions by
 * Lentz's method (Press et al., Numerical Recipes, 3rd ed., sections 6.1, 6.2 and 6.4); points by bisection.
 */

const SMALL = 1e-300;
const MOST_TERMS = 10_000;

/** Lanczos's approximation, g = 7 with nine terms; relative error under 1e-14. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x + 6.5;
  const sum = LANCZOS.reduce((total, term, k) => total + (k === 0 ? term : term / (x - 1 + k)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(shifted) - shifted + Math.log(sum);
}

/** Q(a, x) = Γ(a, x) / Γ(a). */
function upperGamma(a: number, x: number): number {
  if (x <= 0) return 1;
  const scale = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let k = 1; k < MOST_TERMS && term > sum * 1e-17; k++) {
      term *= x / (a + k);
      sum += term;
    }
    return 1 - scale * sum;
  }
  return (
    scale *
    fraction(
      x + 1 - a,
      (k) => -k * (k - a),
      (k) => x + 2 * k + 1 - a,
    )
  );
}

/** 1 / (b₀ + a₁/(b₁ + a₂/(b₂ + …))) */
function fraction(b0: number, a: (k: number) => number, b: (k: number) => number): number {
  let c = 1 / SMALL;
  let d = 1 / b0;
  let value = d;
  for (let k = 1; k < MOST_TERMS; k++) {
    d = 1 / (a(k) * d + b(k) || SMALL);
    c = b(k) + a(k) / c || SMALL;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return value;
}

/** Regularized incomplete beta function I_x(a, b). */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0 || x >= 1) return x <= 0 ? 0 : 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const scale = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  const term = (k: number): number => {
    const m = k >> 1;
    if (k % 2 === 0) return (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    return (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
  };
  return (
    (scale / a) *
    fraction(
      1,
      (k) => term(k),
      () => 1,
    )
  );
}

/** Probability that a chi-square variable of `dof` degrees of freedom (real, above 0) exceeds `value`. */
export const chiSquareTail = (value: number, dof: number): number => upperGamma(dof / 2, value / 2);

/** The point that a standard normal variable exceeds with probability `upper`, at most 0.5. */
export const normalPoint = (upper: number): number => pointOf((z) => upperGamma(0.5, (z * z) / 2) / 2, upper);

/** The same of Student's distribution with `dof` degrees of freedom. */
export const studentPoint = (upper: number, dof: number): number =>
  pointOf((t) => incompleteBeta(dof / (dof + t * t), dof / 2, 0.5) / 2, upper);

function pointOf(upperTail: (x: number) => number, upper: number): number {
  let [low, high] = [0, 1];
  while (upperTail(high) > upper && high < 1e12) high *= 2;
  for (let step = 0; step < 200 && high - low > 1e-15 * high; step++) {
    const middle = (low + high) / 2;
    if (upperTail(middle) > upper) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

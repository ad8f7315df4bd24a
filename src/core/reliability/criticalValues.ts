import { normalPoint, studentPoint } from './distributions';

/** Single-test significance of Baarda's test, and its two-sided critical value (Baarda 1968: 0.1 %, 3.29). */
export const SINGLE_SIGNIFICANCE = 0.001;
/** Non-centrality at which Baarda's test at 0.1 % finds an error with probability 0.80 (Baarda 1968: 4.13). */
export const DELTA_0 = 4.13;

/** Standardized residual beyond which chance is ruled out, two-sided: 3.29 at 0.001. */
export const normalCritical = (significance: number): number => normalPoint(significance / 2);

/**
 * Critical value of Pope's tau: a residual over its own standard deviation where the standard deviation of unit weight
 * is estimated from the same residuals (Pope 1976, NOAA TR NOS 65 NGS 1): t √ν / √(ν − 1 + t²), t the two-sided
 * Student point with ν − 1 degrees of freedom.
 * @param significance of the single test; divide by the number of tests for Bonferroni's bound
 * @param dof ν, at least 2; with fewer every tau is ±1 and no test exists
 */
export function tauCritical(significance: number, dof: number): number {
  if (dof < 2) return Number.POSITIVE_INFINITY;
  const t = studentPoint(significance / 2, dof - 1);
  return (t * Math.sqrt(dof)) / Math.sqrt(dof - 1 + t * t);
}

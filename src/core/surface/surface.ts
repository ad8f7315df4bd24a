import type { Dual } from '../dual';

/**
 * A height field h(a, b), mm. What stands behind it (a low polynomial, a spline) is its own affair.
 * Walls: a = station along the wall (x on the back wall, z on a side wall), b = height. Rim: a = x, b = z.
 */
export interface Surface {
  value(a: number, b: number): number;
  /** [∂h/∂a, ∂h/∂b] */
  gradient(a: number, b: number): [number, number];
  /** [∂²h/∂a², ∂²h/∂a∂b, ∂²h/∂b²], 1/mm */
  curvature(a: number, b: number): [number, number, number];
  /** h with its derivatives with respect to the adjusted parameters, through the coefficients and through (a, b) */
  at(a: Dual, b: Dual): Dual;
  /** ∂h/∂a, likewise */
  slopeAt(a: Dual, b: Dual): Dual;
}

import type { Surface } from '../../../src/core/surface';

/** A surface of a plain function and its derivatives, for tests that need no covariance. */
export function heightField(
  value: (a: number, b: number) => number,
  gradient: (a: number, b: number) => [number, number],
  curvature: (a: number, b: number) => [number, number, number] = () => [0, 0, 0],
): Surface {
  return {
    value,
    gradient,
    curvature,
    at: (a, b) => ({ value: value(a.value, b.value), gradient: null }),
    slopeAt: (a, b) => ({ value: gradient(a.value, b.value)[0], gradient: null }),
  };
}

/** h = p a + q b + ½ (A a² + 2 B a b + C b²) */
export const quadric = ({ p = 0, q = 0, A = 0, B = 0, C = 0 }): Surface =>
  heightField(
    (a, b) => p * a + q * b + (A * a * a + 2 * B * a * b + C * b * b) / 2,
    (a, b) => [p + A * a + B * b, q + B * a + C * b],
    () => [A, B, C],
  );

import type { LeastSquaresProblem } from '../../../../src/core/least-squares';

/** Fit of y = a + b x with unit sigmas. */
export function straightLine(points: readonly (readonly [x: number, y: number])[]): LeastSquaresProblem {
  return {
    start: [0, 0],
    evaluate: ([a, b]) => ({
      misfit: Float64Array.from(points, ([x, y]) => y - a! - b! * x),
      jacobian: points.map(([x]) => Float64Array.of(1, x)),
    }),
  };
}

/** First fundamental form of a map from wall coordinates: E du² + 2 F du dv + G dv². */
export interface Metric {
  E: number;
  F: number;
  G: number;
}

/** Metric of a height field with slopes (h_u, h_v): do Carmo, Differential Geometry of Curves and Surfaces, 2-5. */
export const heightFieldMetric = ([hu, hv]: readonly [number, number]): Metric => ({
  E: 1 + hu * hu,
  F: hu * hv,
  G: 1 + hv * hv,
});

/** Metric of a map into the plane from its derivatives along u and along v. */
export const planarMetric = (xu: number, yu: number, xv: number, yv: number): Metric => ({
  E: xu * xu + yu * yu,
  F: xu * xv + yu * yv,
  G: xv * xv + yv * yv,
});

/**
 * Largest principal strain (Green–Lagrange) that takes lengths of one metric to lengths of the other, dimensionless.
 * Both are near the unit metric: slopes of walls are small.
 */
export function strainBetween(from: Metric, to: Metric): number {
  const [e, f, g] = [(to.E - from.E) / 2, (to.F - from.F) / 2, (to.G - from.G) / 2];
  return Math.abs((e + g) / 2) + Math.hypot((e - g) / 2, f);
}

import { type LeastSquaresProblem, solveLeastSquares } from '../least-squares';
import type { Surface } from '../surface';
import type { FlatMap } from './flatMap';
import { gaussOver } from './gaussOver';
import { planeMap } from './planeMap';
import { type PlanePolynomial, planePolynomial, type Terms } from './planePolynomial';
import { gridOver, type Region } from './region';
import { heightFieldMetric, type Metric, planarMetric, strainBetween } from './strain';

/** An odd degree: what a bow or a saddle leaves are displacements of odd degree. */
const DEGREE = 5;
/** Intervals each way between the points at which the strain left is looked at, edges included. */
const STEPS = 6;

/** A point of the wall with the metric that the map should have there. */
interface Sample {
  metric: Metric;
  /** root of its share of the region */
  weight: number;
  u: Terms;
  v: Terms;
}

/**
 * A sheet that follows the wall: the polynomial map whose metric differs least from the wall's, in the sense of summed
 * squared strains. On a wall that can be developed the metrics agree; else the largest difference left is the strain.
 * With K the wall's Gauss curvature the strains left are, to leading order, the second derivatives of Airy's function φ,
 * Δ²φ = −K, φ = ∂φ/∂n = 0 along the edges: the deflection of a clamped plate of unit stiffness under the load −K. A strip
 * of width a is left with K a²/12 along its edges and half of that, the other way, along its middle; a square with 0.0513
 * K a² in the middle of its edges; a disc of radius R with K R²/8 at its rim. Of the polynomial map's degree 5 the
 * square's comes out 9 % small.
 * The crossing of the control lines stays in place and the level line leaves it along the first axis (where the region
 * does not hold the crossing, its point nearest to it).
 */
export function developMap(surface: Surface, region: Region, degree = DEGREE): FlatMap {
  const basis = planePolynomial(degree, region);
  const sample = (u: number, v: number, weight: number): Sample => ({
    metric: heightFieldMetric(surface.gradient(u, v)),
    weight: Math.sqrt(weight),
    ...basis.slopes(u, v),
  });
  const samples = gaussOver(region, degree + 2).map(({ at: [u, v], weight }) => sample(u, v, weight));
  const outcome = solveLeastSquares(metricProblem(basis, samples), { maxIterations: 20, tolerance: 1e-6 });
  if (!outcome.ok) return strainedPlaneMap(surface, region);
  const x = outcome.solution.x.subarray(0, basis.count);
  const y = outcome.solution.x.subarray(basis.count);

  const anchor: [number, number] = [within(0, region.u), within(0, region.v)];
  const level = basis.slopes(...anchor).u;
  const turn = Math.atan2(dot(level, y), dot(level, x));
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = (u: number, v: number): [number, number] => {
    const terms = basis.values(u, v);
    const [across, up] = [dot(terms, x), dot(terms, y)];
    return [cos * across + sin * up, cos * up - sin * across];
  };
  const [left, below] = turned(...anchor);
  const strainAt = (u: number, v: number): number => {
    const here = sample(u, v, 1);
    return strainBetween(here.metric, metricOf(here, x, y));
  };
  return {
    strain: Math.max(...gridOver(region, STEPS).map(([u, v]) => strainAt(u, v))),
    strainAt,
    toSheet(u, v) {
      const [across, up] = turned(u, v);
      return [across - left + anchor[0], up - below + anchor[1]];
    },
  };
}

/** Unknowns: coefficients of the map's first and second coordinate. Three strains a sample; a last row holds the turn. */
function metricProblem(basis: PlanePolynomial, samples: Sample[]): LeastSquaresProblem {
  const { count, linear, half } = basis;
  const start = new Float64Array(2 * count);
  start[linear.u] = half.u;
  start[count + linear.v] = half.v;
  return {
    start,
    evaluate(coefficients) {
      const x = coefficients.subarray(0, count);
      const y = coefficients.subarray(count);
      const rows = samples.map((sample) => strainRows(sample, x, y));
      const turn = new Float64Array(2 * count);
      turn[count + linear.u] = 1 / half.u;
      return {
        misfit: Float64Array.of(...rows.flatMap(({ misfit }) => misfit), -y[linear.u]! / half.u),
        jacobian: [...rows.flatMap(({ jacobian }) => jacobian), turn],
      };
    },
  };
}

/** Strains of one sample, the shear twice under the sum of squares, and their derivatives. */
function strainRows(
  { metric, weight, u, v }: Sample,
  x: Terms,
  y: Terms,
): { misfit: number[]; jacobian: Float64Array[] } {
  const [xu, xv, yu, yv] = [dot(u, x), dot(v, x), dot(u, y), dot(v, y)];
  const { E, F, G } = planarMetric(xu, yu, xv, yv);
  const count = x.length;
  const row = (of: (du: number, dv: number, tu: number, tv: number) => number): Float64Array =>
    Float64Array.from(
      { length: 2 * count },
      (_, t) => weight * (t < count ? of(u[t]!, v[t]!, xu, xv) : of(u[t - count]!, v[t - count]!, yu, yv)),
    );
  return {
    misfit: [(metric.E - E) / 2, (metric.F - F) * Math.SQRT1_2, (metric.G - G) / 2].map((each) => weight * each),
    jacobian: [
      row((du, _dv, tu) => tu * du),
      row((du, dv, tu, tv) => (tu * dv + tv * du) * Math.SQRT1_2),
      row((_du, dv, _tu, tv) => tv * dv),
    ],
  };
}

const metricOf = ({ u, v }: Sample, x: Terms, y: Terms): Metric =>
  planarMetric(dot(u, x), dot(u, y), dot(v, x), dot(v, y));

/** For walls too wild to follow: the plane of best fit, with the strain that pressing it to the wall would take. */
function strainedPlaneMap(surface: Surface, region: Region): FlatMap {
  const plane = planeMap(surface, region);
  const [xu, yu] = plane.toSheet(1, 0);
  const [xv, yv] = plane.toSheet(0, 1);
  const metric = planarMetric(xu, yu, xv, yv);
  const strainAt = (u: number, v: number): number => strainBetween(heightFieldMetric(surface.gradient(u, v)), metric);
  return { ...plane, strainAt, strain: Math.max(...gridOver(region, STEPS).map(([u, v]) => strainAt(u, v))) };
}

const within = (value: number, [low, high]: [number, number]): number => Math.min(Math.max(value, low), high);

function dot(a: Terms, b: Terms): number {
  let sum = 0;
  for (let t = 0; t < a.length; t++) sum += a[t]! * b[t]!;
  return sum;
}

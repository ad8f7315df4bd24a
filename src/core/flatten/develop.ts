import { solveLeastSquares } from '../least-squares';
import type { Surface } from '../surface';
import type { FlatMap, Region } from './flatMap';

/** Exponents of the polynomial displacement from wall to sheet coordinates; the point (0, 0) stays. */
const DEGREE = 4;
const EXPONENTS: [number, number][] = [];
for (let i = 0; i <= DEGREE; i++) for (let j = 0; i + j <= DEGREE; j++) if (i + j > 0) EXPONENTS.push([i, j]);
/** Samples each way at which lengths are compared. */
const SAMPLES = 7;

/**
 * A sheet that follows the wall: the flat map whose metric differs least from the wall's. Wall metric at (u, v):
 * E = 1 + h_u², F = h_u h_v, G = 1 + h_v² (do Carmo, Differential Geometry of Curves and Surfaces, 2-5). The map is a
 * polynomial of degree 4 in u and v; its first axis is tangent to the level line at the origin. On a wall that can be
 * developed the metrics agree; else the largest difference left is the strain.
 */
export function developMap(surface: Surface, region: Region): FlatMap {
  const scale = Math.max(...region.u.map(Math.abs), ...region.v.map(Math.abs), 1);
  const terms = EXPONENTS.length;
  const samples = grid(region).map(([u, v]) => ({ ...metricAt(surface, u, v), ...basisAt(u / scale, v / scale) }));
  const level = basisAt(0, 0).u;

  const start = new Float64Array(2 * terms);
  start[EXPONENTS.findIndex(([i, j]) => i === 1 && j === 0)] = 1;
  start[terms + EXPONENTS.findIndex(([i, j]) => i === 0 && j === 1)] = 1;

  const rows = 3 * samples.length + 1;
  const outcome = solveLeastSquares(
    {
      start,
      evaluate(x) {
        const misfit = new Float64Array(rows);
        const jacobian = Array.from({ length: rows }, () => new Float64Array(2 * terms));
        samples.forEach((sample, k) => {
          const xu = dot(sample.u, x, 0);
          const xv = dot(sample.v, x, 0);
          const yu = dot(sample.u, x, terms);
          const yv = dot(sample.v, x, terms);
          misfit[3 * k] = (sample.E - (xu * xu + yu * yu)) / 2;
          misfit[3 * k + 1] = sample.F - (xu * xv + yu * yv);
          misfit[3 * k + 2] = (sample.G - (xv * xv + yv * yv)) / 2;
          for (let t = 0; t < terms; t++) {
            const du = sample.u[t]!;
            const dv = sample.v[t]!;
            jacobian[3 * k]![t] = xu * du;
            jacobian[3 * k]![terms + t] = yu * du;
            jacobian[3 * k + 1]![t] = xu * dv + xv * du;
            jacobian[3 * k + 1]![terms + t] = yu * dv + yv * du;
            jacobian[3 * k + 2]![t] = xv * dv;
            jacobian[3 * k + 2]![terms + t] = yv * dv;
          }
        });
        // Takes out the one free rotation: the level line leaves the origin along the first axis.
        misfit[rows - 1] = -dot(level, x, terms);
        for (let t = 0; t < terms; t++) jacobian[rows - 1]![terms + t] = level[t]!;
        return { misfit, jacobian };
      },
    },
    { maxIterations: 12, tolerance: 1e-6 },
  );
  if (!outcome.ok) throw new Error(`flattening: ${outcome.reason}`);
  const { x, misfit } = outcome.solution;

  return {
    strain: misfit.subarray(0, rows - 1).reduce((worst, each) => Math.max(worst, Math.abs(each)), 0),
    toSheet(u, v) {
      const basis = basisValues(u / scale, v / scale);
      return [scale * dot(basis, x, 0), scale * dot(basis, x, terms)];
    },
  };
}

function metricAt(surface: Surface, u: number, v: number) {
  const [hu, hv] = surface.gradient(u, v);
  return { E: 1 + hu * hu, F: hu * hv, G: 1 + hv * hv };
}

const basisValues = (u: number, v: number): number[] => EXPONENTS.map(([i, j]) => u ** i * v ** j);

/** Derivatives of the basis along each coordinate. */
function basisAt(u: number, v: number): { u: number[]; v: number[] } {
  return {
    u: EXPONENTS.map(([i, j]) => (i === 0 ? 0 : i * u ** (i - 1) * v ** j)),
    v: EXPONENTS.map(([i, j]) => (j === 0 ? 0 : j * u ** i * v ** (j - 1))),
  };
}

function grid({ u: [u0, u1], v: [v0, v1] }: Region): [number, number][] {
  const points: [number, number][] = [];
  for (let i = 0; i < SAMPLES; i++) {
    for (let j = 0; j < SAMPLES; j++) {
      points.push([u0 + ((u1 - u0) * i) / (SAMPLES - 1), v0 + ((v1 - v0) * j) / (SAMPLES - 1)]);
    }
  }
  return points;
}

function dot(basis: number[], x: Float64Array, offset: number): number {
  let sum = 0;
  for (let t = 0; t < basis.length; t++) sum += basis[t]! * x[offset + t]!;
  return sum;
}

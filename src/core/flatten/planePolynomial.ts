import type { Region } from './region';

/** Values of all basis terms at a point, or of their derivatives there. */
export type Terms = Float64Array;

/**
 * All monomials up to a degree in coordinates that run from −1 to 1 over the region, the constant left out: the basis
 * of a polynomial map from wall to sheet.
 */
export interface PlanePolynomial {
  count: number;
  /** index of the term that is linear in u, in v */
  linear: { u: number; v: number };
  /** half lengths of the region, mm */
  half: { u: number; v: number };
  values(u: number, v: number): Terms;
  /** derivatives along u and v, 1/mm */
  slopes(u: number, v: number): { u: Terms; v: Terms };
}

export function planePolynomial(degree: number, region: Region): PlanePolynomial {
  const exponents: [number, number][] = [];
  for (let i = 0; i <= degree; i++) for (let j = 0; i + j <= degree; j++) if (i + j > 0) exponents.push([i, j]);
  const middle = { u: (region.u[0] + region.u[1]) / 2, v: (region.v[0] + region.v[1]) / 2 };
  const half = { u: (region.u[1] - region.u[0]) / 2, v: (region.v[1] - region.v[0]) / 2 };
  const scaled = (u: number, v: number): [number, number] => [(u - middle.u) / half.u, (v - middle.v) / half.v];
  const indexOf = (i: number, j: number): number => exponents.findIndex(([a, b]) => a === i && b === j);
  return {
    count: exponents.length,
    linear: { u: indexOf(1, 0), v: indexOf(0, 1) },
    half,
    values(u, v) {
      const [s, t] = scaled(u, v);
      return Float64Array.from(exponents, ([i, j]) => s ** i * t ** j);
    },
    slopes(u, v) {
      const [s, t] = scaled(u, v);
      return {
        u: Float64Array.from(exponents, ([i, j]) => (i === 0 ? 0 : (i * s ** (i - 1) * t ** j) / half.u)),
        v: Float64Array.from(exponents, ([i, j]) => (j === 0 ? 0 : (j * s ** i * t ** (j - 1)) / half.v)),
      };
    },
  };
}

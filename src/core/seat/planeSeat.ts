import { add, constant, type Dual, scale } from '../dual';
import type { Surface } from '../surface';

/** One of the weights that carry a plane over from its supports: c + u·U + v·V. */
export interface Weight {
  c: number;
  u: number;
  v: number;
}

/**
 * The plane through places of a wall, with their derivatives: a sheet that rests on them moves as they do.
 * @param weights one for each height; at its own support 1, at the others 0
 */
export function planeSeat(weights: readonly Weight[], heights: readonly Dual[]): Surface {
  const mix = (of: (weight: Weight) => number): Dual =>
    heights.reduce((sum, height, k) => add(sum, scale(height, of(weights[k]!))), constant(0));
  const [c, u, v] = [mix((weight) => weight.c), mix((weight) => weight.u), mix((weight) => weight.v)];
  return {
    value: (a, b) => c.value + u.value * a + v.value * b,
    gradient: () => [u.value, v.value],
    curvature: () => [0, 0, 0],
    at: (a, b) => add(c, add(product(u, a), product(v, b))),
    slopeAt: () => u,
  };
}

const product = (a: Dual, b: Dual): Dual => add(scale(a, b.value), scale({ value: 0, gradient: b.gradient }, a.value));

/** Weights of the corners of a triangle (barycentric coordinates). */
export function triangleWeights(corners: readonly (readonly [number, number])[]): Weight[] {
  return corners.map((_, k) => {
    const [[u1, v1], [u2, v2]] = [corners[(k + 1) % 3]!, corners[(k + 2) % 3]!];
    const [u0, v0] = corners[k]!;
    const area = (u1 - u0) * (v2 - v0) - (u2 - u0) * (v1 - v0);
    return { c: (u1 * v2 - u2 * v1) / area, u: (v1 - v2) / area, v: (u2 - u1) / area };
  });
}

/** Weights of two places between which a plane stays level along v. */
export const levelWeights = (low: number, high: number): [Weight, Weight] => [
  { c: high / (high - low), u: -1 / (high - low), v: 0 },
  { c: -low / (high - low), u: 1 / (high - low), v: 0 },
];

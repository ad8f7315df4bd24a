import type { Region } from './region';

/** A point of a region with its share of it. */
export interface Weighted {
  at: [number, number];
  /** shares add up to 1 */
  weight: number;
}

/**
 * Points and shares of Gauss–Legendre quadrature, `points` each way: exact for polynomials up to degree 2 points − 1 along
 * each axis (Davis and Rabinowitz, Methods of Numerical Integration, 2nd ed., section 2.7).
 */
export function gaussOver({ u, v }: Region, points: number): Weighted[] {
  const rule = gaussRule(points);
  const along = ([from, to]: [number, number], node: number): number => (from + to) / 2 + ((to - from) / 2) * node;
  return rule.flatMap((a) =>
    rule.map((b) => ({ at: [along(u, a.node), along(v, b.node)], weight: (a.weight * b.weight) / 4 }) as Weighted),
  );
}

/** Nodes on (−1, 1) and weights that add up to 2: roots of the Legendre polynomial by Newton's method. */
export function gaussRule(points: number): { node: number; weight: number }[] {
  return Array.from({ length: points }, (_, k) => {
    let node = Math.cos((Math.PI * (k + 0.75)) / (points + 0.5));
    let slope = 0;
    for (let step = 0; step < 50; step++) {
      let [before, here] = [1, node];
      for (let n = 2; n <= points; n++) [before, here] = [here, ((2 * n - 1) * node * here - (n - 1) * before) / n];
      slope = (points * (node * here - before)) / (node * node - 1);
      const move = here / slope;
      node -= move;
      if (Math.abs(move) < 1e-15) break;
    }
    return { node, weight: 2 / ((1 - node * node) * slope * slope) };
  });
}

import type { Facets } from './facets';
import { smallestAxis } from './smallestAxis';
import { dot, unit, type Vec } from './vec';

/** Angles within which a facet counts as level or upright, narrowing from the guess on, degrees. */
const WITHIN = [22, 10, 5, 3];

/**
 * The direction that level facets stand along and upright ones square to, from a guess: the axis that makes the sum of
 * squared normals along it over level facets, less that over upright ones, largest.
 */
export function uprightDirection({ count, normals }: Facets, guess: Vec): Vec {
  let up = unit(guess);
  for (const degrees of WITHIN) {
    const sine = Math.sin((degrees * Math.PI) / 180);
    const cosine = Math.cos((degrees * Math.PI) / 180);
    const scatter: [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0];
    let used = 0;
    for (let i = 0; i < count; i++) {
      const n: Vec = [normals[3 * i]!, normals[3 * i + 1]!, normals[3 * i + 2]!];
      const along = Math.abs(dot(n, up));
      // The smallest axis of the negated sum is the largest of the sum.
      const weight = along > cosine ? -1 : along < sine ? 1 : 0;
      if (weight === 0) continue;
      used++;
      scatter[0] += weight * n[0] * n[0];
      scatter[1] += weight * n[0] * n[1];
      scatter[2] += weight * n[0] * n[2];
      scatter[3] += weight * n[1] * n[1];
      scatter[4] += weight * n[1] * n[2];
      scatter[5] += weight * n[2] * n[2];
    }
    if (used < 20) return up;
    const { axis } = smallestAxis(scatter);
    up = dot(axis, up) < 0 ? [-axis[0], -axis[1], -axis[2]] : axis;
  }
  return up;
}

import type { Region } from '../flatten';
import type { Surface } from '../surface';

/** Largest principal curvature of a sheet that follows the surface, 1/mm: small slopes, so the Hessian's eigenvalues. */
export function largestCurvature(surface: Surface, { u, v }: Region): number {
  const steps = 8;
  let largest = 0;
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      const [uu, uv, vv] = surface.curvature(u[0] + ((u[1] - u[0]) * i) / steps, v[0] + ((v[1] - v[0]) * j) / steps);
      const mean = (uu + vv) / 2;
      largest = Math.max(largest, Math.abs(mean) + Math.hypot((uu - vv) / 2, uv));
    }
  }
  return largest;
}

/** Strain at the face of a sheet of the given thickness bent to the curvature: t/(2R). */
export const bendingStrain = (thickness: number, curvature: number): number => (thickness * curvature) / 2;

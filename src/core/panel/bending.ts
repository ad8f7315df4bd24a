import { gridOver, type Region } from '../flatten';
import type { Surface } from '../surface';

const STEPS = 8;

/** Largest principal curvature of a sheet that follows the surface, 1/mm: small slopes, so the Hessian's eigenvalues. */
export function largestCurvature(surface: Surface, region: Region): number {
  const curvatures = gridOver(region, STEPS).map(([u, v]) => {
    const [uu, uv, vv] = surface.curvature(u, v);
    return Math.abs((uu + vv) / 2) + Math.hypot((uu - vv) / 2, uv);
  });
  return Math.max(...curvatures);
}

/** Strain at the face of a sheet of the given thickness bent to the curvature: t/(2R). */
export const bendingStrain = (thickness: number, curvature: number): number => (thickness * curvature) / 2;

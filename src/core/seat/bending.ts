import { gridOver, type Region } from '../flatten';
import type { Surface } from '../surface';

const STEPS = 8;

/** Larger principal curvature of a surface, 1/mm: small slopes, so the Hessian's eigenvalue. */
export function principalCurvature(surface: Pick<Surface, 'curvature'>, u: number, v: number): number {
  const [uu, uv, vv] = surface.curvature(u, v);
  return Math.abs((uu + vv) / 2) + Math.hypot((uu - vv) / 2, uv);
}

/** Largest curvature of a sheet that takes the surface's shape, 1/mm. */
export const largestCurvature = (surface: Pick<Surface, 'curvature'>, region: Region, steps = STEPS): number =>
  Math.max(...gridOver(region, steps).map(([u, v]) => principalCurvature(surface, u, v)));

/** Strain at the face of a sheet of the given thickness bent to the curvature: t/(2R). */
export const bendingStrain = (thickness: number, curvature: number): number => (thickness * curvature) / 2;

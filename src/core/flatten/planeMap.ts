import type { Surface } from '../surface';
import type { FlatMap } from './flatMap';
import { gridOver, type Region } from './region';

/**
 * A rigid sheet: the plane of the wall's best fit over the region. Exact lengths within that plane; first axis level,
 * second axis up the plane.
 */
export function planeMap(surface: Surface, region: Region): FlatMap {
  const [slopeU, slopeV] = meanSlopes(surface, region);
  const level = Math.hypot(1, slopeU);
  const shear = (slopeU * slopeV) / level;
  const up = Math.hypot(level, slopeV) / level;
  return { strain: 0, strainAt: () => 0, toSheet: (u, v) => [u * level + v * shear, v * up] };
}

const STEPS = 8;

/** Slopes of the least-squares plane over an even grid, whose axes are orthogonal about its middle. */
function meanSlopes(surface: Surface, region: Region): [number, number] {
  const middle = [(region.u[0] + region.u[1]) / 2, (region.v[0] + region.v[1]) / 2] as const;
  let [uh, uu, vh, vv] = [0, 0, 0, 0];
  for (const [u, v] of gridOver(region, STEPS)) {
    const [du, dv] = [u - middle[0], v - middle[1]];
    const h = surface.value(u, v);
    uh += du * h;
    uu += du * du;
    vh += dv * h;
    vv += dv * dv;
  }
  return [uh / uu, vh / vv];
}

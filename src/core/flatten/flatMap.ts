import type { Surface } from '../surface';

/** Region of a wall, mm. */
export interface Region {
  u: [number, number];
  v: [number, number];
}

/** Where a point of the wall lies on the flat sheet. */
export interface FlatMap {
  /** wall coordinates (u, v) to sheet coordinates, both mm from the crossing of the control lines */
  toSheet(u: number, v: number): [number, number];
  /** largest strain that laying the flat sheet on the wall needs in its own plane; 0 where the wall can be developed */
  strain: number;
}

/**
 * A rigid sheet: the plane of the wall's best fit over the region. Exact lengths within that plane; first axis level,
 * second axis up the plane.
 */
export function planeMap(surface: Surface, region: Region): FlatMap {
  const [slopeU, slopeV] = meanSlopes(surface, region);
  const lengthU = Math.hypot(1, slopeU);
  // Unit vector up the plane, square to the level direction (1, 0, slopeU).
  const upLength = Math.hypot(lengthU, slopeV);
  return {
    strain: 0,
    toSheet: (u, v) => [u * lengthU + (slopeU * slopeV * v) / lengthU, (v * upLength) / lengthU],
  };
}

/** Slopes of the least-squares plane over an even grid, by the normal equations of a centred, orthogonal design. */
function meanSlopes(surface: Surface, { u: [u0, u1], v: [v0, v1] }: Region): [number, number] {
  const steps = 8;
  const sums = { u: 0, uu: 0, v: 0, vv: 0 };
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      const du = (u1 - u0) * (i / steps - 0.5);
      const dv = (v1 - v0) * (j / steps - 0.5);
      const h = surface.value((u0 + u1) / 2 + du, (v0 + v1) / 2 + dv);
      sums.u += du * h;
      sums.uu += du * du;
      sums.v += dv * h;
      sums.vv += dv * dv;
    }
  }
  return [sums.u / sums.uu, sums.v / sums.vv];
}

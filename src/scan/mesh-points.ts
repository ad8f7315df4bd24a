import type { PointStore } from './point-store';

/** Points that are taken of a mesh, about. */
const aboutPoints = 400_000;
/** The golden ratio's plane analogue, whose multiples cover the square most evenly (Roberts, R2 sequence, 2018). */
const [evenA, evenB] = [0.7548776662466927, 0.5698402909980532];

/**
 * Takes points of a mesh: the corners of its triangles, and more on those that are large, spread evenly over them. A
 * mesh whose flat parts have few corners is so seen as densely there as elsewhere. The same mesh gives the same points.
 * @param corners x y z of each, NaN for one that could not be read
 * @param triangles three numbers of corners each
 */
export function addMeshPoints(
  corners: Float32Array,
  triangles: Uint32Array,
  origin: readonly [number, number, number],
  store: PointStore,
): void {
  const [ox, oy, oz] = origin;
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) area += areaOf(corners, triangles, t) || 0;
  const perPoint = area / aboutPoints;
  const used = new Uint8Array(corners.length / 3);
  let even = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    for (const corner of [a, b, c]) {
      if (used[corner / 3]) continue;
      used[corner / 3] = 1;
      store.add(corners[corner]! + ox, corners[corner + 1]! + oy, corners[corner + 2]! + oz);
    }
    const own = areaOf(corners, triangles, t);
    const more = perPoint > 0 ? Math.floor(own / perPoint) : 0;
    for (let i = 0; i < more; i++, even++) {
      let u = (even * evenA) % 1;
      let v = (even * evenB) % 1;
      if (u + v > 1) [u, v] = [1 - u, 1 - v];
      const w = 1 - u - v;
      store.add(
        w * corners[a]! + u * corners[b]! + v * corners[c]! + ox,
        w * corners[a + 1]! + u * corners[b + 1]! + v * corners[c + 1]! + oy,
        w * corners[a + 2]! + u * corners[b + 2]! + v * corners[c + 2]! + oz,
      );
    }
  }
}

/** NaN where a corner could not be read. */
function areaOf(corners: Float32Array, triangles: Uint32Array, t: number): number {
  const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
  const [ux, uy, uz] = [
    corners[b]! - corners[a]!,
    corners[b + 1]! - corners[a + 1]!,
    corners[b + 2]! - corners[a + 2]!,
  ];
  const [vx, vy, vz] = [
    corners[c]! - corners[a]!,
    corners[c + 1]! - corners[a + 1]!,
    corners[c + 2]! - corners[a + 2]!,
  ];
  return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
}

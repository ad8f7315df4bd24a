import type { Job } from '../../core';
import { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
import { spaced } from './sampled';
import type { AlcoveShape } from './shape';

/** Proportions of the drawn basin only; the job gives none and no cut depends on them. */
const basin = {
  tub: { ledge: 70, depthShare: 0.72, draft: 70 },
  'shower-base': { ledge: 45, depthShare: 0.6, draft: 20 },
};
const corners = 48;

export interface RimSolid {
  mesh: MeshData;
  /** the edges of the apron and of the basin, as drawn lines */
  edges: Vec3[][];
}

/** Tub or shower base: the measured rim with a plain basin and apron below it, open at the back and sides that no one sees. */
export function rimSolid(shape: AlcoveShape, rim: Job['rim'], place: (point: Vec3) => Vec3): RimSolid {
  const { ledge, depthShare, draft } = basin[rim.kind];
  const left = shape.corner.left(shape.bottom);
  const right = shape.corner.right(shape.bottom);
  const depth = rim.apronHeight * depthShare;
  const middle = { x: (left + right) / 2, z: rim.width / 2 };
  const half = { x: (right - left) / 2, z: rim.width / 2 };

  const ring = (inset: number, sharpness: number, drop: number): Vec3[] =>
    Array.from({ length: corners + 1 }, (_, i) => {
      const angle = (2 * Math.PI * i) / corners;
      const [x, z] = superellipse(angle, half.x - inset, half.z - inset, sharpness);
      return [middle.x + x, shape.rim(middle.x + x, middle.z + z) - drop, middle.z + z];
    });
  const drawn = (points: Vec3[]) => points.map(place);
  const [lip, wall, floor] = [
    ring(ledge, 9, 0),
    ring(ledge + draft * 0.35, 6, depth * 0.9),
    ring(ledge + draft, 5, depth),
  ];
  const pit: Vec3 = [middle.x, shape.rim(middle.x, middle.z) - depth - 8, middle.z];
  const top = gridMesh([ring(0, 60, 0), lip, wall, floor, floor.map(() => pit)].map(drawn), true);

  const along = spaced(left, right, 24);
  const contour = rim.profile.length > 0 ? rim.profile : [[0, 0] as const];
  const rollsOver = contour[contour.length - 1]![0] - contour[0]![0];
  const start = rim.width - rollsOver;
  const rows = contour.map(([outward, rise]) =>
    along.map((x): Vec3 => [x, shape.rim(x, start) + rise, start + outward - contour[0]![0]]),
  );
  const foot = along.map((x): Vec3 => [x, shape.nominal.rim - rim.apronHeight, rim.width]);
  const apron = gridMesh([foot, ...rows.reverse()].map(drawn));
  const face = rows[0]!;
  const edges = [drawn(lip), drawn([foot[0]!, ...face, foot[foot.length - 1]!, foot[0]!])];
  return { mesh: joinMeshes([top, apron]), edges };
}

/** A point of |x/a|^n + |z/b|^n = 1: an ellipse for n = 2, nearly its bounding rectangle for a large n. */
function superellipse(angle: number, a: number, b: number, n: number): [number, number] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const radius = (Math.abs(c) ** n + Math.abs(s) ** n) ** (-1 / n);
  return [a * c * radius, b * s * radius];
}

import type { Job } from '../../core';
import { spaced } from '../../core';
import { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
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

/**
 * Tub or shower base: the measured rim with a plain basin and apron below it, open at the back and sides that no one
 * sees.
 */
export function rimSolid(shape: AlcoveShape, rim: Job['rim'], place: (point: Vec3) => Vec3): RimSolid {
  const { ledge, depthShare, draft } = basin[rim.kind];
  const left = shape.corner.left(shape.bottom);
  const right = shape.corner.right(shape.bottom);
  const depth = rim.apronHeight * depthShare;
  const contour = rim.profile.length > 0 ? rim.profile : [[0, 0] as const];
  const leaves = contour[0]![0];
  const start = rim.width - (contour.at(-1)![0] - leaves);
  const middle = { x: (left + right) / 2, z: start / 2 };
  const half = { x: (right - left) / 2, z: start / 2 };

  const ring = (inset: number, sharpness: number, drop: number): Vec3[] =>
    Array.from({ length: corners + 1 }, (_, i) => {
      const angle = (2 * Math.PI * i) / corners;
      const [x, z] = superellipse(angle, half.x - inset, half.z - inset, sharpness);
      return [middle.x + x, shape.rim(middle.x + x, middle.z + z) - drop, middle.z + z];
    });
  const drawn = (points: Vec3[]) => points.map(place);
  const [lip, wall, bottom] = [
    ring(ledge, 9, 0),
    ring(ledge + draft * 0.35, 6, depth * 0.9),
    ring(ledge + draft, 5, depth),
  ];
  const pit: Vec3 = [middle.x, shape.rim(middle.x, middle.z) - depth - 8, middle.z];
  const top = gridMesh([ring(0, 60, 0), lip, wall, bottom, bottom.map(() => pit)].map(drawn), true);

  const floor = shape.nominal.rim - rim.apronHeight;
  const along = spaced(left, right, 24);
  const row = (rise: number, z: number) => along.map((x): Vec3 => [x, Math.max(floor, shape.rim(x, start) + rise), z]);
  const rolling = contour.map(([outward, rise]) => row(rise, start + outward - leaves));
  const down = rim.apron.map(([outward, rise]) => row(rise, rim.width + outward));
  const foot = (down.at(-1) ?? rolling.at(-1)!).map(([x, , z]): Vec3 => [x, floor, z]);
  const edge = rolling.at(-1)!;
  const apron = gridMesh([...rolling, ...down, foot].reverse().map(drawn));
  const end = (column: number) => [edge, ...down, foot].map((each) => each.at(column)!);
  const edges = [
    drawn(lip),
    drawn([...edge, ...end(-1), ...[...foot].reverse(), ...end(0).reverse()]),
    ...(rolling.length > 1 ? [drawn(rolling[0]!)] : []),
  ];
  return { mesh: joinMeshes([top, apron]), edges };
}

/** A point of |x/a|^n + |z/b|^n = 1: an ellipse for n = 2, nearly its bounding rectangle for a large n. */
function superellipse(angle: number, a: number, b: number, n: number): [number, number] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const radius = (Math.abs(c) ** n + Math.abs(s) ** n) ** (-1 / n);
  return [a * c * radius, b * s * radius];
}

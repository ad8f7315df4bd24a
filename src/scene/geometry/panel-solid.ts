import type { Panel, PanelHole } from '../../core';
import { coveredOutline } from './clip-to-sheet';
import { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';
import { simplifiedRing } from './simplify';
import { circle, divided, triangulated } from './triangulate';
import { onWall } from './wall-place';

/** Straight sides of the drawn outline keep within this of the true one, mm. */
const drawnTolerance = 0.2;
const longestSide = 160;

/** True where a hole lies within its panel, so that it can be drawn as one. */
export const isWithin = (hole: PanelHole): boolean => hole.edgeDistance > 0;

export interface PanelSolid {
  mesh: MeshData;
  /** outline of the face that shows, closed */
  faceOutline: Vec3[];
}

/** A panel in its place: thickness, holes and all, less what its sheet does not reach. */
export function panelSolid(shape: AlcoveShape, panel: Panel, bed: number, place: (point: Vec3) => Vec3): PanelSolid {
  const ring = divided(simplifiedRing(coveredOutline(panel), drawnTolerance), longestSide);
  const holes = panel.holes.filter(isWithin).map(({ u, v, diameter }) => circle([u, v], diameter / 2));
  const at = (off: number) => {
    const point = onWall(shape, panel.name, off);
    return ([u, v]: readonly [number, number]): Vec3 => place(point(u, v));
  };
  const [behind, face] = [at(bed), at(bed + panel.thickness)];
  // seen from the room u runs to the left on the left wall, which turns counter-clockwise into clockwise
  const mirrored = panel.name === 'left';
  const flat = triangulated(ring, holes, longestSide);
  const sheets = [face, behind].map(
    (side): MeshData => ({
      positions: flat.points.flatMap((point) => [...side(point)]),
      indices: flat.indices,
    }),
  );
  const rims = [ring, ...holes.map((hole) => [...hole].reverse())].map((line) => {
    const around = [...line, line[0]!];
    return gridMesh([around.map(behind), around.map(face)], mirrored);
  });
  const [front, back] = sheets as [MeshData, MeshData];
  return {
    mesh: joinMeshes([turned(front, mirrored), turned(back, !mirrored), ...rims]),
    faceOutline: ring.map(face),
  };
}

const turned = ({ positions, indices }: MeshData, reverse: boolean): MeshData => ({
  positions,
  indices: reverse ? [...indices].reverse() : indices,
});

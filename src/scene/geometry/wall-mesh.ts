import type { WallName } from '../../core';
import { spaced } from '../../core';
import { gridMesh, type MeshData, type Vec3 } from './mesh-data';
import type { AlcoveShape } from './shape';

const rowsDrawn = 25;
const columnsDrawn = 25;

/**
 * The measured face of a wall between its corners, front edges and the heights that the panels reach; it faces the
 * room.
 */
export function wallMesh(shape: AlcoveShape, wall: WallName, place: (point: Vec3) => Vec3): MeshData {
  const rows = spaced(shape.bottom, shape.top, rowsDrawn).map((y) => rowOf(shape, wall, y).map(place));
  return gridMesh(rows, wall === 'right');
}

function rowOf(shape: AlcoveShape, wall: WallName, y: number): Vec3[] {
  const { back, corner, front, side } = shape;
  if (wall === 'back') {
    return spaced(corner.left(y), corner.right(y), columnsDrawn).map((x): Vec3 => [x, y, back(x, y)]);
  }
  const from = back(corner[wall](y), y);
  return spaced(front[wall](y), from, columnsDrawn).map((z): Vec3 => [side[wall](y, z), y, z]);
}

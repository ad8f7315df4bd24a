import type { WallName } from '../../core';
import { spaced } from '../../core';
import { type AlcoveShape, gridMesh, type MeshData, onWall, type Vec3 } from '../geometry';
import type { WallField } from './wall-field';

const rows = 33;
const columns = 33;

/** A wall's panelled face with its deviation and ± at every vertex, mm. */
export interface HeatMesh extends MeshData {
  deviation: number[];
  half: number[];
  /** at and height, two per vertex */
  spots: number[];
  outline: Vec3[];
}

/** The wall between its corners or front edge and over the panelled height, facing the room. */
export function heatMesh(shape: AlcoveShape, wall: WallName, field: WallField, place: (point: Vec3) => Vec3): HeatMesh {
  const point = onWall(shape, wall, 0);
  const grid = spaced(field.height[0], field.height[1], rows).map((v) => {
    const [from, to] = ends(shape, wall, v);
    return spaced(from, to, columns).map((u) => [u, v] as const);
  });
  const placed = grid.map((row) => row.map(([u, v]) => place(point(u, v))));
  const spots = grid.flat();
  const mesh = gridMesh(placed, wall === 'right');
  return {
    ...mesh,
    deviation: spots.map(([u, v]) => field.deviation(u, v)),
    half: spots.map(([u, v]) => field.half(u, v)),
    spots: spots.flat(),
    outline: around(placed),
  };
}

function ends({ back, corner, front }: AlcoveShape, wall: WallName, v: number): [number, number] {
  if (wall === 'back') return [corner.left(v), corner.right(v)];
  return [front[wall](v), back(corner[wall](v), v)];
}

function around(placed: Vec3[][]): Vec3[] {
  const [first, last] = [placed[0]!, placed.at(-1)!];
  return [
    ...first,
    ...placed.map((row) => row.at(-1)!),
    ...[...last].reverse(),
    ...placed.map((row) => row[0]!).reverse(),
  ];
}

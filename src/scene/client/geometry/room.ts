import { spaced } from '../../../core';
import { type AlcoveShape, gridMesh, joinMeshes, type MeshData, type Vec3 } from '../../geometry';

/** The room is drawn only: nothing is cut by it. mm */
const CEILING = 2440;
const ABOVE_TRIM = 150;
const ASIDE = 2600;
const IN_FRONT = 3400;
const ROWS = 14;
const SKIRTING = { height: 95, thick: 14 };

export interface Room {
  floor: number;
  ceiling: number;
  left: number;
  right: number;
  front: number;
  /** walls of the alcove and of the room beside it */
  walls: MeshData[];
  skirting: MeshData;
  floorMesh: MeshData;
  ceilingMesh: MeshData;
}

/**
 * The alcove's walls as measured, carried on to floor and ceiling, with the room that it opens into.
 * @param levelAboveFloor height of the level line, mm
 * @param top of the panels, mm above the level line
 */
export function roomAround(shape: AlcoveShape, levelAboveFloor: number, top: number): Room {
  const floor = -levelAboveFloor;
  const ceiling = Math.max(floor + CEILING, top + ABOVE_TRIM);
  const heights = spaced(floor, ceiling, ROWS);
  const across = (row: (y: number) => Vec3[], flip: boolean): MeshData => gridMesh(heights.map(row), flip);
  const { corner, back, side, front, nominal } = shape;
  const [left, right] = [nominal.left - ASIDE, nominal.right + ASIDE];
  const reach = nominal.front + IN_FRONT;
  const level = (y: number, flip: boolean): MeshData =>
    gridMesh(
      [-200, reach].map((z) => [left, right].map((x): Vec3 => [x, y, z])),
      flip,
    );
  const sideWall = (wall: 'left' | 'right') =>
    across(
      (y) => spaced(front[wall](y), back(corner[wall](y), y), 8).map((z): Vec3 => [side[wall](y, z), y, z]),
      wall === 'right',
    );
  const beside = (wall: 'left' | 'right') =>
    across((y) => {
      const edge: Vec3 = [side[wall](y, front[wall](y)), y, front[wall](y)];
      const far: Vec3 = [wall === 'left' ? left : right, y, nominal.front];
      return wall === 'left' ? [far, edge] : [edge, far];
    }, false);
  const skirting = (wall: 'left' | 'right'): MeshData => {
    const y = floor + SKIRTING.height;
    const x = side[wall](floor, front[wall](floor));
    const far = wall === 'left' ? left : right;
    const [z, farZ] = [front[wall](floor), nominal.front];
    const strip = (height: number, off: number): Vec3[] => {
      const [near, away]: [Vec3, Vec3] = [
        [x, height, z + off],
        [far, height, farZ + off],
      ];
      return wall === 'left' ? [away, near] : [near, away];
    };
    return gridMesh([strip(floor, SKIRTING.thick), strip(y, SKIRTING.thick), strip(y, -20)], false);
  };
  /** Seen from inside the room alone: faces turned away from the viewer are not drawn. */
  const others = [
    gridMesh(
      heights.map((y) => [reach, -200].map((z): Vec3 => [left, y, z])),
      false,
    ),
    gridMesh(
      heights.map((y) => [-200, reach].map((z): Vec3 => [right, y, z])),
      false,
    ),
    gridMesh(
      heights.map((y) => [right, left].map((x): Vec3 => [x, y, reach])),
      false,
    ),
  ];
  return {
    floor,
    ceiling,
    left: nominal.left,
    right: nominal.right,
    front: nominal.front,
    walls: [
      across((y) => spaced(corner.left(y), corner.right(y), 8).map((x): Vec3 => [x, y, back(x, y)]), false),
      sideWall('left'),
      sideWall('right'),
      beside('left'),
      beside('right'),
      ...others,
    ],
    skirting: joinMeshes([skirting('left'), skirting('right')]),
    floorMesh: level(floor, true),
    ceilingMesh: level(ceiling, false),
  };
}

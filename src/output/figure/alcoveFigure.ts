import { type Fold, fold, foldedOutline, type Job, type Piece, type Point, type Result, type Vec3 } from '../../core';
import { around } from '../drawing';
import { onWall, surfacesOf } from '../picture';
import type { Figure, FigureShape, Look } from './figure';

/**
 * The lined alcove in one-point perspective, seen from in front and a little to the side of the dry wall: walls, panels
 * with their holes, trim, shelves, tub or base. Walls are drawn through their corners: a bow is less than a line's width.
 */
export function alcoveFigure(job: Job, result: Result): Figure {
  const { walls, panels, pieces, rim, front } = result;
  const off = job.fit.bed + job.fit.thickness;
  const surfaces = surfacesOf(result);
  const { side, rim: rimAt } = surfaces;
  const out = { left: mean(front.left.value), right: mean(front.right.value) };
  const [low, high] = [mean(rim.value.flat()), Math.max(...walls.back.sampled.height)];
  const head = high + 0.12 * (high - low);
  const floor = -job.levelAboveFloor;
  const [left, right] = [side('left', 0, 0), side('right', 0, 0)];

  const width = right - left;
  const deep = Math.max(out.left, out.right, job.rim.width);
  const eye: Vec3 = [
    (left + right) / 2 + 0.2 * width * (job.fit.wetWall === 'left' ? 1 : -1),
    low + 0.7 * (high - low),
    deep + 1.5 * Math.max(width, head - floor),
  ];
  const project = ([x, y, z]: Vec3): Point => {
    const nearer = (eye[2] - deep) / (eye[2] - z);
    return [(x - eye[0]) * nearer, (y - eye[1]) * nearer];
  };
  const area = (points: readonly Vec3[], look: Look): FigureShape => ({
    kind: 'path',
    points: points.map(project),
    closed: true,
    look,
  });

  const wallAreas = [
    area(
      square([left, floor], [right, head]).map((at) => onWall(surfaces, 'back', at, 0)),
      'wall',
    ),
    ...(['left', 'right'] as const).map((wall) =>
      area(
        square([0, floor], [out[wall], head]).map((at) => onWall(surfaces, wall, at, 0)),
        'wall',
      ),
    ),
  ];
  const panelAreas = (['back', 'left', 'right'] as const).flatMap((wall) => [
    area(
      panels[wall].outline.map((at) => onWall(surfaces, wall, at, off)),
      'side',
    ),
    ...panels[wall].holes.map(({ u, v, diameter }) =>
      area(
        circle([u, v], diameter / 2).map((at) => onWall(surfaces, wall, at, off)),
        'hole',
      ),
    ),
  ]);
  const flat = (piece: Piece): FigureShape => area(foldedOutline(piece), 'panel');
  const upright = ({ kind }: Piece): boolean => kind === 'vertical';
  const z = job.rim.width;
  const rimCorner = (wall: 'left' | 'right', at: number): Vec3 => {
    const x = side(wall, low, at);
    return [x, rimAt(x, at), at];
  };
  const [a, b] = [rimCorner('left', z), rimCorner('right', z)];
  const rimFace = [a, b, rimCorner('right', 0), rimCorner('left', 0)];
  const tub = [
    area(rimFace, 'panel'),
    area(basin(rimFace, job.rim.kind === 'tub' ? 0.1 : 0.06), 'top'),
    area([[a[0], floor, z], [b[0], floor, z], b, a], 'panel'),
  ];
  const shapes = [
    ...wallAreas,
    ...panelAreas,
    ...pieces.trim.filter((piece) => !upright(piece)).map(flat),
    ...pieces.shelves.flatMap((shelf) => shelfShapes(shelf, fold(shelf), area)),
    ...tub,
    ...pieces.legs.map(flat),
    ...pieces.trim.filter(upright).map(flat),
  ];
  const bounds = around(shapes.flatMap((shape) => (shape.kind === 'path' ? shape.points : [])));
  return { title: 'The alcove with its panels, trim and shelves', bounds, size: 0.02 * (head - floor), shapes };
}

/** A shelf from above: underside, edges and top. */
function shelfShapes(
  { outline, thickness }: Piece,
  place: Fold,
  area: (points: readonly Vec3[], look: Look) => FigureShape,
): FigureShape[] {
  const edges = outline.map(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    return area(
      [place(x, y, 0), place(nextX, nextY, 0), place(nextX, nextY, thickness), place(x, y, thickness)],
      'top',
    );
  });
  return [
    ...edges,
    area(
      outline.map(([x, y]) => place(x, y, thickness)),
      'panel',
    ),
  ];
}

/** The bottom of a tub or base: the rim's face drawn in on all sides. */
function basin(corners: readonly Vec3[], share: number): Vec3[] {
  const [a, b, c, d] = corners as [Vec3, Vec3, Vec3, Vec3];
  const at = (s: number, t: number): Vec3 =>
    [0, 1, 2].map((i) => (1 - t) * ((1 - s) * a[i]! + s * b[i]!) + t * ((1 - s) * d[i]! + s * c[i]!)) as Vec3;
  const t = share * 1.6;
  return Array.from({ length: 40 }, (_, k) => {
    const angle = (2 * Math.PI * k) / 40;
    // A rounded rectangle: a superellipse of the fifth degree.
    const round = (value: number): number => Math.sign(value) * Math.abs(value) ** 0.4;
    return at(0.5 + (0.5 - share) * round(Math.cos(angle)), 0.5 + (0.5 - t) * round(Math.sin(angle)));
  });
}

const square = ([u0, v0]: Point, [u1, v1]: Point): Point[] => [
  [u0, v0],
  [u1, v0],
  [u1, v1],
  [u0, v1],
];

const circle = ([u, v]: Point, radius: number): Point[] =>
  Array.from({ length: 24 }, (_, k): Point => {
    const angle = (Math.PI * k) / 12;
    return [u + radius * Math.cos(angle), v + radius * Math.sin(angle)];
  });

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

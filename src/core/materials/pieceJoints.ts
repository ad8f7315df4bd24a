import type { Supplies, WallName } from '../job-file';
import type { Point } from '../panel';
import { fold, type Piece } from '../piece';
import { extent, spaced } from '../range';
import type { ShelfPiece } from '../shelf';
import type { FittedForMaterials } from './fittedForMaterials';
import { closed, type Joint, type JointFiller } from './joint';
import { moving } from './moving';

const STEPS = 12;

/** Joints along trim, legs and shelves: sealant against panels, tub and apron, paintable caulk against the bare wall. */
export function pieceJoints({ trim, legs, shelves }: FittedForMaterials, supplied: Supplies['movement']): Joint[] {
  return [
    ...trim.flatMap(trimJoints),
    ...legs.flatMap(legJoints),
    ...shelves.flatMap((shelf) => shelfJoints(shelf, supplied)),
  ];
}

/** Whether a joint of the panels lies under a piece of trim. */
export function coveredBy({ trim }: Pick<FittedForMaterials, 'trim'>): (id: string) => boolean {
  const covered = new Set(
    trim.flatMap(({ kind, wall }) => {
      if (kind === 'top' || kind === 'side-top') return [`top.${wall}`];
      return kind === 'vertical' ? [`front.${wall}`] : [];
    }),
  );
  return (id) => covered.has(id);
}

function trimJoints(piece: Piece): Joint[] {
  const low = longEdge(piece, 'low');
  const high = longEdge(piece, 'high');
  const joint = (which: string, words: string, filler: JointFiller, path: Point[]): Joint =>
    closed(`${piece.id}.${which}`, `${piece.name}, ${words}`, filler, { wall: piece.wall, path });
  if (piece.kind === 'angle') {
    return [
      joint('back-flange', 'flange on the back panel', 'sealant', low),
      joint('side-flange', 'flange on the side panel', 'sealant', high),
    ];
  }
  if (piece.kind !== 'vertical') {
    return [joint('panel', 'on the panel', 'sealant', low), joint('wall', 'at the wall', 'caulk', high)];
  }
  // u grows away from the back wall on either side wall: the edge further out is the room's.
  const [inner, outer] = low[0]![0] < high[0]![0] ? [low, high] : [high, low];
  return [joint('panel', 'on the panel', 'sealant', inner), joint('wall', 'at the wall', 'caulk', outer)];
}

const legJoints = (piece: Piece): Joint[] =>
  piece.edges.flatMap(({ name, marks }) => {
    const filler: JointFiller = name === 'front' ? 'caulk' : 'sealant';
    const path = onWall(
      piece,
      marks.map(({ at }) => at),
    );
    return path.length < 2
      ? []
      : [
          closed(`${piece.id}.${name.replaceAll(' ', '-')}`, `${piece.name}, ${name}`, filler, {
            wall: piece.wall,
            path,
          }),
        ];
  });

/**
 * A shelf is sealed to both panels, its gap at the narrower and wider end as it comes; it grows across each joint by
 * its own depth.
 */
const shelfJoints = ({ id, name, bracketLines, gaps }: ShelfPiece, supplied: Supplies['movement']): Joint[] =>
  bracketLines.map(({ wall, from, to }) => {
    const gap = gaps.find((each) => each.wall === wall);
    const joint = closed(`${id}.${wall}`, `${name} at the ${wall} panel`, 'sealant', { wall, path: [from, to] });
    const [min, max] = [Math.max(0, gap?.min ?? 0), Math.max(0, gap?.max ?? 0)];
    const widths: Joint['widths'] = [
      [0, min],
      [joint.length, max],
    ];
    const across = bracketLines.find((line) => line.wall !== wall);
    const depth = across ? Math.hypot(across.to[0] - across.from[0], across.to[1] - across.from[1]) : joint.length;
    return moving({ ...joint, widths }, depth, supplied);
  });

/** One of the long edges of a strip, wall coordinates. */
function longEdge({ axis, outline, ...piece }: Piece, which: 'low' | 'high'): Point[] {
  const [along, across] = axis === 'x' ? ([0, 1] as const) : ([1, 0] as const);
  const edge = extent(outline, across)[which === 'low' ? 0 : 1];
  const points = spaced(...extent(outline, along), STEPS + 1).map(
    (at): Point => (axis === 'x' ? [at, edge] : [edge, at]),
  );
  return onWall({ ...piece, axis }, points);
}

function onWall(piece: Pick<Piece, 'axis' | 'stations' | 'wall' | 'thickness'>, points: readonly Point[]): Point[] {
  const place = fold(piece);
  return points.map(([x, y]) => wallPoint(piece.wall, place(x, y, piece.thickness)));
}

const wallPoint = (wall: WallName, [x, y, z]: readonly [number, number, number]): Point =>
  wall === 'back' ? [x, y] : [z, y];

import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { type Alcove, towardsRoom } from '../alcove';
import { add, constant, type Dual, scale, subtract } from '../dual';
import type { Job, Shelf } from '../job-file';
import { DEGREES_PER_RADIAN } from '../length';
import type { Point } from '../panel';
import { counterClockwise, makePiece, type Piece, type PieceEdge, type PieceNote, plus } from '../piece';
import { bracketLines } from './bracketLines';
import { edgeGaps } from './edgeGaps';
import type { ShelfPiece } from './shelf';
import { direction, shelfOutline } from './shelfOutline';
import { type ShelfPlane, shelfPlane } from './shelfPlane';

/** 1/8 and 1/4 in per ft in mm per m, exact: the range of falls for ledges in wet areas. */
export const LEAST_FALL = 1000 / 96;
export const MOST_FALL = 1000 / 48;
/** A shelf's own plane and its fitted shape: edges straight, square through the thickness, a gap off both panels. */
export function fitShelf(alcove: Alcove, covariance: Matrix, job: Job, shelf: Shelf, id: string): ShelfPiece {
  const plane = shelfPlane(alcove, job, shelf);
  const sd = (quantity: Dual): number => standardDeviation(quantity, covariance);
  const ends = endsOf(plane, shelf);
  const flat = (x: number, z: number): Point => plane.toFlat(x, z);
  const inner = flat(ends.inner.x, ends.inner.z);
  const back = flat(ends.back.x, ends.back.z);
  const side = flat(ends.side.x, ends.side.z);
  const outline = counterClockwise(shelfOutline({ inner, back, side }, shelf, job.trim));

  const edges: PieceEdge[] = [
    {
      name: 'back edge',
      method: 'saw',
      marks: [
        { at: inner, sd: sd(plane.backEdge(ends.inner.x)) },
        { at: back, sd: sd(plane.backEdge(ends.back.x)) },
      ],
    },
    {
      name: 'side edge',
      method: 'saw',
      marks: [
        { at: inner, sd: sd(plane.sideEdge(ends.inner.z)) },
        { at: side, sd: sd(plane.sideEdge(ends.side.z)) },
      ],
    },
    {
      name: 'front edge',
      method: shelf.front === 'round' ? 'jigsaw' : 'saw',
      marks: [back, side].map((at) => ({ at, sd: 0 })),
    },
  ];
  const gaps = edgeGaps(alcove, job, shelf, plane, ends);
  const [b, s] = [direction(inner, back), direction(inner, side)];
  const piece: Piece = makePiece({
    id: `shelves.${id}`,
    kind: 'shelf',
    name: `shelf ${id}`,
    wall: shelf.corner,
    outline,
    thickness: shelf.thickness,
    bodies: [{ back: outline, face: outline, from: 0, to: shelf.thickness }],
    axis: 'x',
    edges,
    stations: [{ at: 0, frame: { ...plane.frame, origin: plus(plane.frame.origin, plane.frame.w, -shelf.thickness) } }],
    stock: 'shelf',
    notes: fallNotes(shelf),
    cautions: ['saw', 'dust', 'adhesive', 'load'],
  });
  return {
    ...piece,
    kind: 'shelf',
    corner: shelf.corner,
    height: plane.corner.y.value,
    angle: {
      degrees: Math.acos(b[0] * s[0] + b[1] * s[1]) * DEGREES_PER_RADIAN,
      sd: sd(angleOf(plane, shelf, ends)) * DEGREES_PER_RADIAN,
    },
    slope: shelf.slope,
    bracketLines: bracketLines(alcove, job, shelf, plane, ends, sd),
    gaps,
  };
}

/** Places of the three corners, alcove coordinates. */
export interface ShelfEnds {
  inner: { x: number; z: number };
  back: { x: number; z: number };
  side: { x: number; z: number };
}

function endsOf({ corner, alongBack, alongSide, backEdge, sideEdge }: ShelfPlane, shelf: Shelf): ShelfEnds {
  let [x, z] = [corner.x.value, corner.z.value];
  for (let step = 0; step < 12; step++) {
    x = sideEdge(z).value;
    z = backEdge(x).value;
  }
  const backX = corner.x.value + shelf.back * alongBack[0];
  const sideZ = corner.z.value + shelf.side * alongSide[2];
  return {
    inner: { x, z },
    back: { x: backX, z: backEdge(backX).value },
    side: { x: sideEdge(sideZ).value, z: sideZ },
  };
}

/** The part of the corner's angle that the readings decide, radians: 90° less both edges' slopes towards each other. */
function angleOf({ backEdge, sideEdge }: ShelfPlane, shelf: Shelf, { inner, back, side }: ShelfEnds): Dual {
  const alongBack = scale(subtract(backEdge(back.x), backEdge(inner.x)), 1 / Math.abs(back.x - inner.x));
  const alongSide = scale(
    subtract(sideEdge(side.z), sideEdge(inner.z)),
    towardsRoom(shelf.corner) / (side.z - inner.z),
  );
  return subtract(constant(Math.PI / 2), add(alongBack, alongSide));
}

/** Falls outside the customary range, with a hair for rounding to two decimals. */
function fallNotes({ slope }: Shelf): PieceNote[] {
  if (slope < LEAST_FALL - 0.02) {
    return [{ text: 'falls by less than 1/8 in per ft (10.4 mm per m); water may stand on it', howMuch: null }];
  }
  if (slope > MOST_FALL + 0.02) {
    return [{ text: 'falls by more than 1/4 in per ft (20.8 mm per m); things may slide off it', howMuch: null }];
  }
  return [];
}

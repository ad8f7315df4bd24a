import type { Job, Side, WallName } from '../../../src/core/job-file';
import { type Fold, fold, type Piece } from '../../../src/core/piece';
import type { ShelfPiece } from '../../../src/core/shelf';
import { frontAt, rimAt, type TrueAlcove, wallAt } from '../../simulate';

export interface Misfit {
  piece: string;
  where: string;
  /** mm */
  by: number;
}

interface Pieces {
  trim: readonly Piece[];
  legs: readonly Piece[];
  fillers: readonly Piece[];
  shelves: readonly ShelfPiece[];
}

type Place = readonly [x: number, y: number, z: number];

/**
 * Butted pieces folded up into an alcove known exactly: how far each lies off the panel or wall it is made for, and how
 * far its ends and scribed edges miss the clearance that they are cut to. Written from the alcove's formulas alone.
 */
export function pieceMisfits(alcove: TrueAlcove, job: Job, { trim, legs, fillers, shelves }: Pieces): Misfit[] {
  const { fit, trim: choice } = job;
  const face = fit.bed + fit.thickness;
  const misfits: Misfit[] = [];
  const note = (piece: Piece, where: string, by: number): void => {
    misfits.push({ piece: piece.id, where, by: Math.abs(by) });
  };

  const offWall = (wall: WallName, [x, y, z]: Place): number => {
    if (wall === 'back') return z - wallAt(alcove, 'back', x, y);
    return (wall === 'left' ? 1 : -1) * (x - wallAt(alcove, wall, z, y));
  };
  const lies = (piece: Piece, off: number): void => {
    const place = fold(piece);
    for (const [x, y] of piece.outline) note(piece, 'on its wall', offWall(piece.wall, place(x, y, 0)) - off);
  };
  /** Clearance of an edge's mark, the least over the piece's depth. */
  const least = (
    place: Fold,
    [x, y]: readonly [number, number],
    depths: readonly number[],
    clear: (at: Place) => number,
  ) => Math.min(...depths.map((w) => clear(place(x, y, w))));

  for (const piece of trim) {
    lies(piece, face);
    const place = fold(piece);
    const depths = [0, piece.thickness];
    const edge = (name: string) => piece.edges.find((each) => each.name === name)!.marks.map(({ at }) => at);
    if (piece.kind === 'top') {
      for (const side of ['left', 'right'] as const) {
        const [low, lowTop, high, highTop] = edge(`${side} end`);
        for (const at of [low!, lowTop!])
          note(piece, `${side} panel`, least(place, at, depths, (p) => offWall(side, p)) - face - choice.joint);
        for (const at of [high!, highTop!])
          note(piece, `${side} wall`, least(place, at, depths, (p) => offWall(side, p)) - choice.joint);
      }
    }
    if (piece.kind === 'side-top') {
      for (const at of edge('back end')) {
        note(
          piece,
          'top piece',
          least(place, at, [piece.thickness], (p) => offWall('back', p)) - face - choice.thickness - choice.joint,
        );
      }
    }
    if (piece.kind === 'vertical') {
      const line = piece.stations.map(({ frame }) => frame.origin[2]);
      note(piece, 'plumb', Math.max(...line) - Math.min(...line));
      note(piece, 'outer line', line[0]! - Math.max(...[...panelEdge(piece.wall as Side)]));
      const foot = edge('foot');
      foot.forEach((at, i) => {
        const [, , z] = place(...at, 0);
        const overRim = least(place, at, depths, ([px, py, pz]) => py - rimAt(alcove, px, pz));
        const reachesIn = z < line[0]! - (choice.verticalWidth ?? choice.width) + 1e-6;
        if (z < job.rim.width - 0.5) note(piece, 'rim', overRim - fit.rimJoint);
        else if (overRim < -1 && i < foot.length - 1 && !reachesIn)
          note(piece, 'apron', z - job.rim.width - fit.rimJoint);
      });
    }
  }
  for (const leg of legs) {
    lies(leg, fit.bed);
    const place = fold(leg);
    for (const { at } of leg.edges.find(({ name }) => name === 'front')!.marks) {
      const [, y, z] = place(...at, 0);
      note(leg, 'front line', z - frontAt(alcove, leg.wall as Side, y) + fit.frontSetBack);
    }
    for (const { at } of leg.edges.find(({ name }) => name === 'beside the tub')!.marks) {
      note(leg, 'apron', place(...at, 0)[2] - job.rim.width - fit.rimJoint);
    }
  }
  for (const filler of fillers) lies(filler, fit.bed);
  for (const shelf of shelves) {
    const place = fold(shelf);
    for (const [name, wall] of [
      ['back edge', 'back'],
      ['side edge', shelf.corner],
    ] as const) {
      for (const { at } of shelf.edges.find((each) => each.name === name)!.marks) {
        note(shelf, name, least(place, at, [0, shelf.thickness], (p) => offWall(wall, p)) - face - job.shelves[0]!.gap);
      }
    }
  }
  return misfits;

  /** Front edge of a side's panel at its foot and its top, and of its leg at the floor. */
  function* panelEdge(side: Side): Generator<number> {
    const withLeg = legs.some(({ wall }) => wall === side);
    const x = wallAt(alcove, side, job.rim.width, rimAt(alcove, 0, 0));
    const foot = withLeg ? -job.levelAboveFloor + job.legs.floorGap : rimAt(alcove, x, job.rim.width) + fit.rimJoint;
    for (const y of [foot, fit.top]) yield frontAt(alcove, side, y) - fit.frontSetBack;
  }
}

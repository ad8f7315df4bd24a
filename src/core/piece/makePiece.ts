import { Z_95 } from '../reliability';
import type { Piece } from './piece';
import { blankSize } from './shape';

type Left = 'ends' | 'notches' | 'tape' | 'cover' | 'notes';

/** A piece with what follows from the rest filled in: blank size and worst ±. */
export function makePiece(given: Omit<Piece, 'size' | 'worst95' | Left> & Partial<Pick<Piece, Left>>): Piece {
  const sds = given.edges.flatMap(({ marks }) => marks.map(({ sd }) => sd));
  return {
    ends: [],
    notches: [],
    tape: [],
    cover: null,
    notes: [],
    ...given,
    size: blankSize([given.outline, ...given.bodies.flatMap(({ back, face }) => [back, face])], given.axis),
    worst95: Z_95 * Math.max(0, ...sds),
  };
}

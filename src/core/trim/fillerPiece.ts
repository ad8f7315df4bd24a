import { counterClockwise, makePiece, type Piece } from '../piece';
import type { TrimSite } from './site';

/** Behind trim a hollow narrower than this is filled with adhesive instead, mm (common practice, no source). */
export const LEAST_FILLER = 6;
/** Filler strips hide behind trim, with this much room around them, mm (common practice, no source). */
export const ROOM = 1;

/** A strip of sheet, bedded on the wall like the panels, as thick as they are. */
export function fillerPiece(
  { job }: TrimSite,
  given: Pick<Piece, 'id' | 'name' | 'wall' | 'axis' | 'outline' | 'edges' | 'stations'>,
): Piece {
  const outline = counterClockwise(given.outline);
  return makePiece({
    ...given,
    kind: 'filler',
    outline,
    thickness: job.fit.thickness,
    bodies: [{ back: outline, face: outline, from: 0, to: job.fit.thickness }],
    stock: 'sheet',
    notes: [{ text: 'cut from an offcut; it does not show', howMuch: null }],
    cautions: ['knife', 'dust', 'adhesive', 'thin-piece'],
  });
}

import { type Job, type Piece, type ShelfPiece, Z_95 } from '../../../core';
import { capital } from '../capital';
import type { Lengths } from '../lengths';

/** What a piece's dimensions do not tell, in sentences. */
export function pieceNotes(piece: Piece | ShelfPiece, job: Job, lengths: Lengths): string[] {
  const { fine, coarse } = lengths;
  return [
    ...('bracketLines' in piece ? shelfNotes(piece, job, lengths) : []),
    ...(piece.tape.length > 0 ? ['Tape it at the dotted strips while its adhesive cures.'] : []),
    ...(piece.cover !== null && piece.cover.taper > 0
      ? [
          `Hides a taper of ${fine(piece.cover.taper).text}; laps the panel by ${fine(piece.cover.lap).text} at least${piece.cover.shows > 0 ? `; ${fine(piece.cover.shows).text} stays in sight` : ''}.`,
        ]
      : []),
    ...piece.notes.map(({ text, howMuch }) => sentence(howMuch === null ? text : `${text}: ${coarse(howMuch).text}`)),
  ];
}

const MM_PER_FOOT = 304.8;

function shelfNotes({ angle, slope, height, gaps }: ShelfPiece, job: Job, { fine, coarse }: Lengths): string[] {
  const fall =
    job.display === 'in'
      ? `${fine((slope * MM_PER_FOOT) / 1000).text} in each foot`
      : `${slope.toFixed(1)} mm in each metre`;
  const up = `${coarse(Math.abs(height)).text} ${height < 0 ? 'below' : 'above'} the level line`;
  return [
    `Corner ${angle.degrees.toFixed(1)}° ±${Math.max(0.1, Z_95 * angle.sd).toFixed(1)}°; top ${up} in the corner; falls ${fall} (${(slope / 10).toFixed(1)} %) towards the room.`,
    ...gaps.map(
      ({ wall, min, max }) => `Gap at the ${wall} panel ${fine(min).text} to ${fine(max).text}, for sealant.`,
    ),
  ];
}

const sentence = (text: string): string => `${capital(text)}${/[.!]$/.test(text) ? '' : '.'}`;

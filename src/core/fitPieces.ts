import type { Matrix } from 'ml-matrix';
import type { Alcove } from './alcove';
import type { Job, WallName } from './job-file';
import { planSheets, type SheetLayout } from './layout';
import { fitLegs } from './leg';
import type { Panel, Problem } from './panel';
import type { Piece } from './piece';
import { fitShelves, type ShelfPiece } from './shelf';
import { fitTrim } from './trim';

/** Everything cut besides the panels, and what is cut from which sheet. */
export interface FittedPieces {
  pieces: { trim: Piece[]; legs: Piece[]; fillers: Piece[]; shelves: ShelfPiece[] };
  layout: SheetLayout;
  problems: Problem[];
}

/**
 * Legs first, then the trim over panels and legs with its fillers, shelves, and last the sheets they come from.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function fitPieces(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panels: Record<WallName, Panel>,
  seats = alcove,
): FittedPieces {
  const { legs, problems: legProblems } = fitLegs(alcove, covariance, job);
  const { trim, fillers, problems: trimProblems } = fitTrim(alcove, covariance, job, panels, legs, seats);
  const { shelves, problems: shelfProblems } = fitShelves(seats, covariance, job, panels);
  const { layout, problems: sheetProblems } = planSheets(job, panels, [...legs, ...fillers]);
  return {
    pieces: { trim, legs, fillers, shelves },
    layout,
    problems: [...legProblems, ...trimProblems, ...shelfProblems, ...sheetProblems],
  };
}

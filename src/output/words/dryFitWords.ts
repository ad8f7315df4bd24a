import type { DryFit, Job, Result } from '../../core';
import { pieceTitle } from './pieceWords';

/** Misfit of a template, always in mm: the tolerance is far below any fraction. */
export const misfitText = (mm: number): string => `${mm.toFixed(2)} mm`;

/** What came of the virtual dry fit, a sentence. */
export function dryFitWords(dryFit: DryFit, job: Job, result: Pick<Result, 'pieces'>): string {
  const { pieces, worst, tolerance } = dryFit;
  const fault = dryFitFault(dryFit, job, result);
  if (fault !== null) return fault;
  const edges = pieces.reduce((sum, piece) => sum + piece.edges.length, 0);
  const at = worst === null ? '' : `; worst ${whichEdge(worst, job, result)} by ${misfitText(worst.by)}`;
  return `Virtual dry fit: ${pieces.length} templates read back from their files and folded up into the alcove; none of ${edges} edges and holes misses by more than ${misfitText(tolerance)}${at}.`;
}

/** What is wrong with the templates, a sentence; null where all fit. */
export function dryFitFault(
  { fits, unread, worst, tolerance }: DryFit,
  job: Job,
  result: Pick<Result, 'pieces'>,
): string | null {
  if (fits) return null;
  const [first] = unread;
  if (first) {
    return `Virtual dry fit: the template of the ${named(first.piece, job, result)} cannot be read back: ${first.why}. Do not cut from it.`;
  }
  if (worst === null) return 'Virtual dry fit: there is no template to try.';
  const how = worst.kind === 'overlap' ? 'reaches too far by' : 'falls short by';
  return `Virtual dry fit: the template of ${whichEdge(worst, job, result)} ${how} ${misfitText(worst.by)}, more than ${misfitText(tolerance)}. Do not cut from it.`;
}

const named = (piece: string, job: Job, result: Pick<Result, 'pieces'>): string =>
  pieceTitle(piece, job, result).toLowerCase();

/** `the left side panel at its back edge` */
function whichEdge({ piece, edge }: NonNullable<DryFit['worst']>, job: Job, result: Pick<Result, 'pieces'>): string {
  const panelEdge = piece.startsWith('panels.') && !edge.startsWith('hole') ? `${edge} edge` : edge;
  return `the ${named(piece, job, result)} at its ${panelEdge}`;
}

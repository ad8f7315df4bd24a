import type { Job, Result } from '../../core';
import { capital, panelTitle } from '../drawing';

/** Name of a piece by its place in the result: `panels.back` as `Back panel`, `legs.left` as `Left leg`. */
export function pieceTitle(place: string, job: Job, { pieces }: Pick<Result, 'pieces'>): string {
  const panel = /^panels\.(back|left|right)$/.exec(place)?.[1];
  if (panel !== undefined) return panelTitle(panel as 'back' | 'left' | 'right', job);
  const all = [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves];
  const piece = all.find(({ id }) => id === place || place.endsWith(`.${id}`));
  return capital(piece?.name ?? place);
}

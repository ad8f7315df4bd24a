import type { Alcove } from '../../../../src/core/alcove';
import type { Job, JobInput } from '../../../../src/core/job-file';
import { fitLegs } from '../../../../src/core/leg';
import { fitPanel } from '../../../../src/core/panel';
import type { Piece } from '../../../../src/core/piece';
import { type FittedTrim, fitTrim } from '../../../../src/core/trim';
import { type TrimSite, trimSite } from '../../../../src/core/trim/site';
import { covarianceOf, jobOf } from '../panel/fitting';

/** Panels that reach the front edges of walls as deep as the rim is wide, 760 mm; bed 2, thickness 6, top 980. */
const trimJob = (choices: Partial<JobInput> = {}): Job =>
  jobOf({ levelAboveFloor: 1240, ...choices, fit: { frontSetBack: 0, ...choices.fit } });

const panelsOf = (alcove: Alcove, job: Job, sd: number) => {
  const fit = (name: 'back' | 'left' | 'right') => fitPanel(alcove, covarianceOf(sd), job, name).panel;
  return { back: fit('back'), left: fit('left'), right: fit('right') };
};

export function trimmed(alcove: Alcove, choices: Partial<JobInput> = {}, sd = 0): FittedTrim & { legs: Piece[] } {
  const job = trimJob(choices);
  const { legs } = fitLegs(alcove, covarianceOf(sd), job);
  return { ...fitTrim(alcove, covarianceOf(sd), job, panelsOf(alcove, job, sd), legs), legs };
}

export function siteOf(alcove: Alcove, choices: Partial<JobInput> = {}, sd = 0): TrimSite {
  const job = trimJob(choices);
  return trimSite(alcove, covarianceOf(sd), job, panelsOf(alcove, job, sd));
}

export function pieceOf(pieces: readonly Piece[], id: string): Piece {
  const piece = pieces.find((each) => each.id === id);
  if (piece === undefined) throw new Error(`no piece ${id} among ${pieces.map((each) => each.id).join(', ')}`);
  return piece;
}

/** Coordinates to a hundredth of a millimetre, for a look at a whole outline. */
export const rounded = (outline: readonly (readonly [number, number])[]): number[][] =>
  outline.map((point) => point.map((value) => Math.round(100 * value) / 100 + 0));

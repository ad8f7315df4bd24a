import type { Matrix } from 'ml-matrix';
import type { Alcove } from '../alcove';
import type { Job, WallName } from '../job-file';
import type { Panel, Problem } from '../panel';
import { fitShelf } from './fitShelf';
import type { ShelfPiece } from './shelf';
import { shelfProblems } from './shelfProblems';

/** Every shelf of the job, and what keeps one from being put up. */
export function fitShelves(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panels: Record<WallName, Panel>,
): { shelves: ShelfPiece[]; problems: Problem[] } {
  const shelves = job.shelves.map((shelf, i) => fitShelf(alcove, covariance, job, shelf, shelf.id ?? `${i + 1}`));
  return { shelves, problems: shelfProblems(job, shelves, panels) };
}

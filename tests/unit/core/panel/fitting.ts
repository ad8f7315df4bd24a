import { Matrix } from 'ml-matrix';
import type { Alcove } from '../../../../src/core/alcove';
import type { Job, JobInput, Rim } from '../../../../src/core/job-file';
import { fitPanel, type Panel, type PanelName, type Problem } from '../../../../src/core/panel';
import { seatFigures, seatPanels } from '../../../../src/core/seat';
import { jobWith } from '../../../simulate';

export const FIT = { thickness: 6, bed: 2, cornerJoint: 2, rimJoint: 3, top: 980, frontSetBack: 5 };

export const jobOf = (choices: Partial<JobInput> = {}): Job =>
  jobWith([], { ...choices, fit: { ...FIT, ...choices.fit } });

export const rimOf = (profile: Rim['profile'], width = 760): Rim => jobOf({ rim: { profile, width } }).rim;

/** Every parameter known to `sd` in its own unit, independently. */
export const covarianceOf = (sd = 0, count = 25): Matrix => Matrix.eye(count, count, sd * sd);

export const fitted = (
  alcove: Alcove,
  name: PanelName,
  choices: Partial<JobInput> = {},
): { panel: Panel; problems: Problem[] } => {
  const job = jobOf(choices);
  const seating = seatPanels(alcove, job);
  const seated = { edges: seating.edges, ...seatFigures(alcove, job, seating, name) };
  return fitPanel(alcove, covarianceOf(), job, name, seated);
};

import type { Matrix } from 'ml-matrix';
import type { Alcove } from '../alcove';
import type { Job } from '../job-file';
import { type Panel, type PanelName, type Problem, settingOrder } from '../panel';
import { backWayIn } from './backWayIn';
import { carriedSheets } from './carriedSheets';
import type { GettingIn } from './report';
import { sideWayIn } from './sideWayIn';

/**
 * How every sheet and panel gets to the alcove, and every panel, in the order of setting (back, dry side, wet wall), to
 * its wall; and which cannot.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function gettingIn(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panels: Record<PanelName, Panel>,
  seats: Alcove = alcove,
): { gettingIn: GettingIn; problems: Problem[] } {
  const last = settingOrder(job).at(-1);
  const set = (side: 'left' | 'right') =>
    sideWayIn(alcove, seats, covariance, job, panels[side], side, side === last ? job.fit.bed + job.fit.thickness : 0);
  const [back, left, right] = [backWayIn(alcove, seats, covariance, job, panels.back), set('left'), set('right')];
  const { carried, problems } = carriedSheets(job, panels);
  return {
    gettingIn: { panels: { back: back.way, left: left.way, right: right.way }, carried },
    problems: [...back.problems, ...left.problems, ...right.problems, ...problems],
  };
}

import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import type { Dual } from '../dual';
import type { Job, Side, Trim, WallName } from '../job-file';
import type { Panel } from '../panel';
import { tapeSd } from '../survey';

/** What every trim piece is fitted to. All mm; distances off a wall are level towards the room. */
export interface TrimSite {
  alcove: Alcove;
  job: Job;
  trim: Trim;
  panels: Record<WallName, Panel>;
  /** off the wall: the panels' back and their face, on which the trim lies */
  panelBack: number;
  panelFace: number;
  /** heights of a level piece's lower and upper edge */
  lowerEdge: number;
  upperEdge: number;
  /** width of a lip, along the outer edge; 0 for a flat strip */
  lipWidth: number;
  verticalWidth: number;
  /** standard deviation of the floor under the level line */
  floorSd: number;
  sd(quantity: Dual): number;
}

/** Room between a lip and the panel's edge that it covers, mm (common practice, no source). */
const LIP_CLEARANCE = 1;

export function trimSite(alcove: Alcove, covariance: Matrix, job: Job, panels: Record<WallName, Panel>): TrimSite {
  const { trim, fit } = job;
  const lipWidth = trim.lip > 0 ? trim.thickness : 0;
  const rise = Math.max(trim.rise, lipWidth > 0 ? lipWidth + LIP_CLEARANCE : 0);
  return {
    alcove,
    job,
    trim,
    panels,
    panelBack: fit.bed,
    panelFace: fit.bed + fit.thickness,
    lowerEdge: fit.top + rise - trim.width,
    upperEdge: fit.top + rise,
    lipWidth,
    verticalWidth: trim.verticalWidth ?? trim.width,
    floorSd: tapeSd(job.levelAboveFloor),
    sd: (quantity) => standardDeviation(quantity, covariance),
  };
}

/** How far the verticals stand past the panel's edge where that stands out most. */
export const overhangOf = ({ trim, lipWidth }: TrimSite): number =>
  Math.max(trim.overhang, lipWidth > 0 ? lipWidth + LIP_CLEARANCE : 0);

export const SIDES: readonly Side[] = ['left', 'right'];

import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import type { Dual } from '../dual';
import type { Job, Trim, WallName } from '../job-file';
import type { Panel } from '../panel';
import { tapeSd } from '../survey';

/** Lines that trim runs along. All mm; distances off a wall are level towards the room. */
export interface TrimLines {
  /** the alcove with its walls where the panels' backs stand, the even bed taken off */
  alcove: Alcove;
  /** the alcove with its bare walls, for what goes past the panels to them */
  bare: Alcove;
  job: Job;
  trim: Trim;
  /** off the wall: the panels' back and their face, on which the trim lies */
  panelBack: number;
  panelFace: number;
  /** heights of a level piece's lower and upper edge */
  lowerEdge: number;
  upperEdge: number;
  /** width of a lip, along the outer edge; 0 for a flat strip */
  lipWidth: number;
  verticalWidth: number;
}

/** What every trim piece is fitted to. */
export interface TrimSite extends TrimLines {
  panels: Record<WallName, Panel>;
  /** standard deviation of the floor under the level line */
  floorSd: number;
  sd(quantity: Dual): number;
}

/** Room between a lip and the panel's edge that it covers, mm (common practice, no source). */
const LIP_CLEARANCE = 1;

export function trimSite(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panels: Record<WallName, Panel>,
  seats = alcove,
): TrimSite {
  return {
    ...trimLines(alcove, job, seats),
    panels,
    floorSd: tapeSd(job.levelAboveFloor),
    sd: (quantity) => standardDeviation(quantity, covariance),
  };
}

export function trimLines(alcove: Alcove, job: Job, seats = alcove): TrimLines {
  const { trim, fit } = job;
  const lipWidth = trim.lip > 0 ? trim.thickness : 0;
  const rise = Math.max(trim.rise, lipWidth > 0 ? lipWidth + LIP_CLEARANCE : 0);
  return {
    alcove: seats,
    bare: alcove,
    job,
    trim,
    panelBack: fit.bed,
    panelFace: fit.bed + fit.thickness,
    lowerEdge: fit.top + rise - trim.width,
    upperEdge: fit.top + rise,
    lipWidth,
    verticalWidth: trim.verticalWidth ?? trim.width,
  };
}

/** True where the level pieces stand wholly above the side panels' tops, so that none of it lies on a panel. */
export const standsAbove = ({ job, trim, lowerEdge }: TrimLines): boolean => lowerEdge >= job.fit.top + trim.joint;

/** How far the verticals stand past the panel's edge where that stands out most. */
export const overhangOf = ({ trim, lipWidth }: TrimLines): number =>
  Math.max(trim.overhang, lipWidth > 0 ? lipWidth + LIP_CLEARANCE : 0);

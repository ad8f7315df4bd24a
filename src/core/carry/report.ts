import type { PanelName } from '../panel';
import type { Vec3 } from '../piece';

/** Where a panel stands on its way in, against its final place. Lengths in mm, angles in degrees. */
export interface Pose {
  /** what is done to come here; empty between */
  step: string;
  /**
   * turned about an axis of the alcove through the pivot, as seen along it: y upright, x level along the back wall, z
   * out
   */
  axis: 'x' | 'y' | 'z';
  pivot: Vec3;
  angle: number;
  /** then moved */
  shift: Vec3;
  /** bowed about an upright line, its middle this far out of the plane, its ends drawn together by the shortening */
  bow: { sagitta: number; shortening: number };
}

export type Way = 'straight' | 'tilted' | 'bowed' | 'blocked';

/** How a panel gets to its wall. Lengths in mm, angles in degrees. */
export interface WayIn {
  panel: PanelName;
  way: Way;
  /** free on each side at the tightest place of the way, and its 1 sigma; negative = it lacks; null = nothing bounds it */
  clearance: number | null;
  sd: number;
  /** the clearance is less than its 95 % half-width */
  doubtful: boolean;
  /** the tightest place: height over the level line, and distance from the back wall's origin plane */
  tightest: { height: number; depth: number } | null;
  /** what would be free going straight in */
  straight: { clearance: number | null; sd: number };
  /** turned about an upright or a level line, which edge goes first */
  tilt: { about: 'upright' | 'level'; first: 'left' | 'right' | 'bottom' | 'top'; angle: number } | null;
  /** bent so that it passes; strain and limit in per cent, force in N over the whole panel */
  bow: { shortening: number; sagitta: number; strain: number; limit: number; force: number } | null;
  /** to be lifted on the way so that it clears the rim */
  lift: number;
  /** how far it stands out before the alcove's front edge while it is turned */
  reach: number;
  poses: Pose[];
}

/** One place that a sheet passes on its way. */
export interface Passage {
  place: 'door' | 'corridor' | 'stair' | 'landing' | 'standing';
  passes: boolean;
  /** to spare in all: height or width of an opening, or length up to the longest that passes; negative = it lacks */
  clearance: number;
  sd: number;
  /** carried on its long edge or its short edge */
  edge: 'long' | 'short';
  /** leaned over by so many degrees */
  lean: number;
}

/** A sheet as bought, or cut, on its way to the alcove. */
export interface Carried {
  panel: PanelName;
  as: 'sheet' | 'panel';
  width: number;
  height: number;
  passages: Passage[];
}

/** What of the job can be got in, and how. */
export interface GettingIn {
  panels: Record<PanelName, WayIn>;
  carried: Carried[];
}

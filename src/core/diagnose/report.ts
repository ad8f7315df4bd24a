/** A surface sampled on a grid: value[i][j] at height[i], at[j]; all mm. For drawing. */
export interface SampledSurface {
  at: number[];
  height: number[];
  value: number[][];
  /** standard deviation (1 sigma), mm */
  sd: number[][];
}

/** Values and standard deviations on a grid: `value[i][j]` at height i, at j; mm. */
export interface SampledField {
  value: number[][];
  sd: number[][];
}

/**
 * Distance of a wall from its best plumb plane and from its best plane, towards the room positive, over the judged
 * area.
 */
export interface DeviationReport {
  at: number[];
  height: number[];
  plumb: SampledField;
  flat: SampledField;
}

export interface WallReport {
  /** the panelled area that is judged: from corner to corner or front edge, from the rim to the panels' top, mm */
  judged: { at: [number, number]; height: [number, number] };
  /** mm per m, positive = leans into the room going up, mean over the panelled height at mid-width */
  plumb: number;
  plumbSd: number;
  /** mm at mid-height from the straight line between top and bottom, hollow positive */
  bow: number;
  bowSd: number;
  /** mm at mid-width from the straight line between the two sides at the level line, hollow positive */
  bowAcross: number;
  bowAcrossSd: number;
  /** mm that the fourth corner of the panelled area stands off the plane through the other three */
  twist: number;
  twistSd: number;
  /** height field over the panelled area: z on the back wall, x on a side wall */
  sampled: SampledSurface;
  deviation: DeviationReport;
}

export interface CornerReport {
  /** inside angle in degrees at bottom, level line and top */
  angle: { height: number; value: number; sd: number }[];
}

/** The rim's height m(x, z), sampled: value[i][j] at z = z[i], x = x[j]. */
export interface RimReport {
  x: number[];
  z: number[];
  value: number[][];
  sd: number[][];
  /**
   * mm per m along the back wall, positive = higher at the right; and from the back to the front, positive = higher at
   * the front
   */
  outOfLevel: { along: number; alongSd: number; across: number; acrossSd: number };
}

/** Front edge of a side wall: z at each height. */
export interface FrontReport {
  height: number[];
  value: number[];
  sd: number[];
}

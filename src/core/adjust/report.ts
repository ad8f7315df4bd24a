import type { ReadingKind, Side, WallName } from '../job-file';

/** What the adjustment found about one reading (a plumb reading gives one row per gap, id `r7/0`). */
export interface ReadingReport {
  id: string;
  kind: ReadingKind;
  /** as entered, mm (degrees for an angle) */
  observed: number;
  /** adjusted minus observed; null while the reading is off */
  residual: number | null;
  /** standard deviation used, same unit */
  sd: number;
  /** Baarda's standardized residual, |v|/(sigma sqrt r); null where nothing checks the reading */
  w: number | null;
  /** redundancy number, 0 (nothing checks it) to 1 */
  redundancy: number | null;
  /** minimal detectable error, same unit; null where nothing checks the reading */
  mdb: number | null;
  flag: null | 're-measure' | 'unchecked' | 'off';
}

/** The reading that fits worst, when it is beyond the test. */
export interface Suspect {
  id: string;
  w: number;
  /** the value the other readings point to, same unit as the reading */
  fits: number;
  /** false where the readings cannot tell which of several is wrong */
  located: boolean;
  /** ids that the test cannot tell apart from this one */
  alternatives: string[];
}

/** The reading that would lower the worst cut-edge ± most. */
export interface NextReading {
  kind: ReadingKind;
  wall: WallName | null;
  side: Side | null;
  height: number;
  at: number | null;
  /** largest cut-edge standard deviation before and after, mm */
  sdBefore: number;
  sdAfter: number;
}

export interface AdjustmentReport {
  /** observations (priors included) less unknowns */
  dof: number;
  /** estimated standard deviation of unit weight; null without redundancy */
  s0: number | null;
  iterations: number;
  readings: ReadingReport[];
  suspect: Suspect | null;
  next: NextReading | null;
  /** what rests on a prior or a placeholder alone, in words: 'left wall: bow' */
  assumed: string[];
  /** adjusted parameters by name, with their standard deviations */
  parameters: { name: string; value: number; sd: number; assumed: boolean }[];
}

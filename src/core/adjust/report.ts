import type { ReadingKind, Side, WallName } from '../job-file';
import type { EdgeName, PanelName } from '../panel';
import type { Unread } from '../plan';
import type { Slip } from '../slip';
import type { ScanFinding } from './scanFindings';

/** A place on a cut edge: at a height on an upright edge, at a distance along a level one (wall coordinates, mm). */
export interface CutEdgePlace {
  panel: PanelName;
  edge: EdgeName;
  along: number;
}

/** How far the cut edge that moves most would move, signed, and where. */
export interface CutEdgeMove extends CutEdgePlace {
  /** mm */
  by: number;
  /** in 1/32 in */
  by32nds: number;
}

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
  /** internal reliability: minimal detectable error, same unit; null where nothing checks the reading */
  mdb: number | null;
  /** external reliability: what an error as large as `mdb`, undetected, would do to the cut edge that it moves most */
  external: CutEdgeMove | null;
  /** `re-measure`: a suspect, or one of those that it cannot be told from */
  flag: null | 're-measure' | 'unchecked' | 'off';
}

/** What leaving a reading out would do. */
export interface LeftOut {
  /** id of the reading to switch off; for a gap of a plumb reading, the whole of it */
  reading: string;
  move: CutEdgeMove;
  /** largest 95 % half-width of a cut edge before and after, mm */
  worst95Before: number;
  worst95After: number;
}

/** A reading that looks wrong. */
export interface Suspect {
  id: string;
  kind: ReadingKind;
  observed: number;
  /** test statistic, the other suspects left out: w, or tau (see `test` of the report) */
  w: number;
  /** the value the other readings point to, same unit as the reading, and its standard deviation */
  fits: number;
  fitsSd: number;
  /** false where the readings cannot tell which of several is wrong: one reading too few to tell */
  located: boolean;
  /** ids that the test cannot tell apart from this one */
  alternatives: string[];
  /** what would explain it if this reading is right, in words: `left wall: bow up the wall` */
  orShape: string[];
  /** the slip that it looks like */
  slip: Slip | null;
  /** null where without the reading a size is not measured at all */
  ifOff: LeftOut | null;
}

/** The reading that would lower the worst cut-edge ± most. */
export interface NextReading {
  /** the whole reading but for id and value */
  reading: Unread;
  kind: ReadingKind;
  wall: WallName | null;
  side: Side | null;
  height: number;
  at: number | null;
  /** largest cut-edge standard deviation before and after, mm */
  sdBefore: number;
  sdAfter: number;
}

/** How readings of one kind agree with the standard deviation that they were given. */
export interface KindReport {
  kind: ReadingKind;
  /** sum of their redundancy numbers */
  redundancy: number;
  /** their standard deviation as estimated from the residuals, as a multiple of the given one */
  factor: number;
  /** probability of a factor as large as this by chance */
  probability: number;
}

export interface AdjustmentReport {
  /** observations (priors included) less unknowns */
  dof: number;
  /** estimated standard deviation of unit weight with the instruments' standard deviations; null without redundancy */
  s0: number | null;
  iterations: number;
  readings: ReadingReport[];
  /** the strongest of `suspects` */
  suspect: Suspect | null;
  suspects: Suspect[];
  /** the test that suspects failed and its critical value; null where too few readings check each other for a test */
  test: 'w' | 'tau';
  critical: number | null;
  /** chi-square test of the readings against their instruments, suspects left out */
  global: { redundancy: number; factor: number | null; probability: number };
  /** kinds of reading with enough redundancy to judge, suspects left out */
  kinds: KindReport[];
  /**
   * factor on every reading's standard deviation, and so on every stated ±: 1, unless the global test fails at 1 %, then
   * the factor that makes the readings agree
   */
  scale: number;
  /** scans in use: how they fit, a line for each surface, and what they did not know of themselves */
  scans: ScanFinding[];
  /** walls whose readings or cells called for a spline */
  uneven: WallName[];
  /** what is farther out than the priors allow for, in words; the readings alone settle it */
  beyondPrior: string[];
  next: NextReading | null;
  /** what rests on a prior or a placeholder alone, in words: 'left wall: bow' */
  assumed: string[];
  /** adjusted parameters by name, with their standard deviations */
  parameters: { name: string; value: number; sd: number; assumed: boolean }[];
}

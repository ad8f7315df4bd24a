import type { AdjustmentReport } from './adjust';
import type { CornerReport, FrontReport, RimReport, WallReport } from './diagnose';
import type { Side, WallName } from './job-file';
import type { Materials } from './materials';
import type { Panel, Problem } from './panel';
import type { SequenceStep } from './sequence';

/** All that follows from a job. Lengths in mm, angles in degrees; plain JSON. */
export interface Result {
  format: 'nookwright-result';
  version: 1;
  adjustment: AdjustmentReport;
  walls: Record<WallName, WallReport>;
  corners: Record<Side, CornerReport>;
  rim: RimReport;
  front: Record<Side, FrontReport>;
  panels: Record<WallName, Panel>;
  pieces: { trim: never[]; legs: never[]; fillers: never[]; shelves: never[] };
  materials: Materials;
  sequence: SequenceStep[];
  problems: Problem[];
}

import type { AdjustmentReport } from './adjust';
import type { Advice } from './advice';
import type { BedReport } from './bed';
import type { GettingIn } from './carry';
import type { FrontReport } from './diagnose';
import type { DryFit } from './dry-fit';
import type { Side, WallName } from './job-file';
import type { SheetLayout, StockPlan } from './layout';
import type { Materials } from './materials';
import type { Panel, Problem } from './panel';
import type { Piece } from './piece';
import type { SequenceStep } from './sequence';
import type { ShelfPiece } from './shelf';
import type { JudgedDiagnosis } from './verdict';

/** All that follows from a job. Lengths in mm, angles in degrees; plain JSON. */
export interface Result {
  format: 'nookwright-result';
  version: 1;
  adjustment: AdjustmentReport;
  walls: JudgedDiagnosis['walls'];
  corners: JudgedDiagnosis['corners'];
  rim: JudgedDiagnosis['rim'];
  front: Record<Side, FrontReport>;
  panels: Record<WallName, Panel>;
  pieces: { trim: Piece[]; legs: Piece[]; fillers: Piece[]; shelves: ShelfPiece[] };
  /** what is cut from which sheet */
  layout: SheetLayout;
  /** what trim is cut from which stock length; there once `planStock` has been asked, which takes a solver and a while */
  stock?: StockPlan;
  materials: Materials;
  /** how each panel's sheet sits on its wall */
  bedding: Record<WallName, BedReport>;
  /** how sheets and panels get to the alcove and to their walls */
  gettingIn: GettingIn;
  sequence: SequenceStep[];
  problems: Problem[];
  /** what does not keep the job from being built */
  advice: Advice[];
  /** there once the templates' files have been made and read back */
  dryFit?: DryFit;
}

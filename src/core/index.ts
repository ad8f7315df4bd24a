export type {
  AdjustmentReport,
  CutEdgeMove,
  CutEdgePlace,
  KindReport,
  LeftOut,
  NextReading,
  ReadingReport,
  Suspect,
} from './adjust';
export type { CornerReport, FrontReport, RimReport, SampledSurface, WallReport } from './diagnose';
export * from './job-file';
export * from './length';
export type { Joint, MaterialLine, Materials } from './materials';
export type {
  CutMethod,
  EdgeName,
  Gap,
  Mark,
  Panel,
  PanelEdge,
  PanelHole,
  PanelName,
  Point,
  Problem,
} from './panel';
export { Z_95 } from './reliability';
export { type PlannedReading, type PlanOptions, surveyPlan, type Unread } from './plan';
export type { Result } from './result';
export type { SequenceStep } from './sequence';
export type { Slip, SlipKind } from './slip';
export { solve } from './solve';

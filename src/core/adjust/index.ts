export { type Adjustment, adjust, standardDeviation } from './adjust';
export { assumedParameters } from './assumed';
export { type CutEdge, responsesOf } from './cutEdgeMoves';
export { kindReports } from './kinds';
export { readingReports } from './readingReports';
export type {
  AdjustmentReport,
  CutEdgeMove,
  CutEdgePlace,
  KindReport,
  LeftOut,
  NextReading,
  ReadingReport,
  Suspect,
} from './report';
export { type ScanFinding, type ScanSurfaceFinding, scanFindings } from './scanFindings';
export { suspectsOf } from './suspects';

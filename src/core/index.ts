export type {
  AdjustmentReport,
  CutEdgeMove,
  CutEdgePlace,
  KindReport,
  LeftOut,
  NextReading,
  ReadingReport,
  ScanFinding,
  ScanSurfaceFinding,
  Suspect,
} from './adjust';
export type { Advice } from './advice';
export { basisOf } from './basisOf';
export type { BedReport, Contact, Convergence, Patch, PlaceOnBed, Shim } from './bed';
export { type Carried, type GettingIn, movePoint, type Passage, type Pose, type WayIn } from './carry';
export {
  applyChoice,
  type Hiding,
  type HidingPair,
  hidingOf,
  hidingPairs,
  SHELF_COUNTS,
  SHELF_SIZES,
  type ShelfSet,
  shelfSetOf,
  shelvesOf,
} from './choice';
export type {
  CornerReport,
  DeviationReport,
  FrontReport,
  RimReport,
  SampledField,
  SampledSurface,
  WallReport,
} from './diagnose';
export { type Lean, leanOver } from './diagnose';
export {
  DRY_FIT_TOLERANCE,
  type DryFit,
  dryFit,
  type EdgeFit,
  type FlatTemplate,
  type PieceFit,
  type ReadBack,
} from './dry-fit';
export { finishes, lookWords, nameOfFinish } from './finish';
export * from './job-file';
export {
  type Column,
  type LinearModel,
  type LinearSolution,
  type PlacedPiece,
  planStock,
  type Rectangle,
  type SheetInUse,
  type SheetLayout,
  type SolveLinear,
  type StockBar,
  type StockPlan,
} from './layout';
export { splitContour } from './leg';
export * from './length';
export {
  type AdhesiveLayout,
  CARTRIDGES,
  GYPSUM_EXPANSION,
  GYPSUM_SWELLING,
  type Joint,
  type JointMovement,
  type MaterialLine,
  type Materials,
} from './materials';
export {
  type CutMethod,
  crossings,
  type EdgeName,
  type Gap,
  type HoleTool,
  holeTool,
  type Mark,
  type Panel,
  type PanelEdge,
  type PanelHole,
  type PanelName,
  PLANE_UP_TO,
  type Point,
  type Problem,
  settingOrder,
  type Unfolding,
} from './panel';
export {
  type Angle,
  type Body,
  type Caution,
  type Cover,
  edgeStretch,
  type Fold,
  type Frame,
  fold,
  foldedOutline,
  type Notch,
  type Piece,
  type PieceEdge,
  type PieceEnd,
  type PieceKind,
  type PieceMark,
  type PieceNote,
  type Station,
  type Vec3,
} from './piece';
export { type PlannedReading, type PlanOptions, surveyPlan, type Unread } from './plan';
export {
  editableMoney,
  moneyText,
  type Price,
  type PriceGroup,
  type PriceLine,
  type PriceUnit,
  parseMoney,
  priceAMetre,
  priceOf,
  priceSold,
  ROUNDING_WORDS,
  type SoldLength,
  soldLength,
  type TaxLine,
} from './price';
export { extent, spaced } from './range';
export { DELTA_0, normalCritical, SINGLE_SIGNIFICANCE, Z_95 } from './reliability';
export type { Result } from './result';
export {
  type CondenseOptions,
  condenseScan,
  LABEL,
  LABEL_NAMES,
  type LabelName,
  movePoints,
  type NotSegmented,
  type PointCloud,
  type RigidFrame,
  type ScanCells,
  type Segmented,
  type SegmentOptions,
  type SegmentQuality,
  segmentScan,
  somePoints,
} from './scan';
export type { ResidualMap } from './scanned';
export { cautions, type SequenceStep } from './sequence';
export type { BracketLine, ShelfPiece } from './shelf';
export type { Slip, SlipKind } from './slip';
export { solve } from './solve';
export { angleSd, gapSd, straightedgeSd, type TakenValue, takenValue, tapeSd } from './survey';
export { degreeMark, type Temperature, temperatureInside, temperatureShown, temperatureText } from './temperature';
export {
  type FigureName,
  GROSSLY_LEANING,
  GROSSLY_UNEVEN,
  JOINT_TAKES_UP,
  type JudgedFigure,
  type Judgement,
  type PlaceVerdict,
  panelSizeWords,
  type ToleranceSet,
  toleranceSets,
  type Verdict,
  type WallVerdict,
} from './verdict';
export { withStockPlan } from './withStockPlan';

export type { Choice } from './choice';
export type { Finish } from './finish';
export {
  type Bedding,
  type Carrying,
  type Cutting,
  type Fit,
  type Fixture,
  type Instruments,
  type Job,
  type JobInput,
  jobSchema,
  type Priors,
  type Rim,
  type Schedule,
  type Sheet,
  type Stud,
  type Supplies,
  type Tolerances,
} from './job';
export { type Fault, type ParsedJob, parseJob, parseJobText, pathText } from './parse';
export type { Prices } from './prices';
export { LEAST_PROFILE_STEP } from './profileStep';
export type { Quote } from './quote';
export {
  type EarlierValue,
  type Reading,
  type ReadingKind,
  type ReadingOf,
  reading,
  type Station,
} from './reading';
export { type Scan, type ScanGrid, type ScannedEdge, type ScanSurface, scan } from './scan';
export { type Shelf, shelf } from './shelf';
export { SIDES, type Side, WALLS, type WallName } from './sides';
export type { Trim } from './trim';

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
  LEAST_PROFILE_STEP,
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
export type { Quote } from './quote';
export {
  type EarlierValue,
  type Reading,
  type ReadingKind,
  type ReadingOf,
  reading,
  SIDES,
  type Side,
  type Station,
  WALLS,
  type WallName,
} from './reading';
export { type Scan, type ScanGrid, type ScannedEdge, type ScanSurface, scan } from './scan';
export { type Shelf, shelf } from './shelf';
export type { Trim } from './trim';

export {
  type Fit,
  type Fixture,
  type Instruments,
  type Job,
  type JobInput,
  jobSchema,
  type Priors,
  type Rim,
  type Sheet,
} from './job';
export { type Fault, type ParsedJob, parseJob, parseJobText, pathText } from './parse';
export {
  type Reading,
  type ReadingKind,
  type ReadingOf,
  reading,
  type Side,
  type Station,
  type WallName,
} from './reading';

export { type Diagnosis, diagnose } from './diagnose';
export { type Lean, leanOver } from './leanOver';
export type {
  CornerReport,
  DeviationReport,
  FrontReport,
  RimReport,
  SampledField,
  SampledSurface,
  WallReport,
} from './report';

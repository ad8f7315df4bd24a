export { type Diagnosis, diagnose } from './diagnose';
export type {
  CornerReport,
  DeviationReport,
  FrontReport,
  RimReport,
  SampledField,
  SampledSurface,
  WallReport,
} from './report';

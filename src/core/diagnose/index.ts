export { type Diagnosis, diagnose } from './diagnose';
export type { CornerReport, FrontReport, RimReport, SampledSurface, WallReport } from './report';

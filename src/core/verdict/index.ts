export { panelSizeWords } from './doubts';
export type { Judgement } from './judge';
export type { EdgeRunOut, FigureName, JudgedFigure, PlaceVerdict, Verdict, WallVerdict } from './report';
export { limitsOf, type ToleranceSet, toleranceSets } from './tolerances';
export { type JudgedDiagnosis, withVerdicts } from './withVerdicts';

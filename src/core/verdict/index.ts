export { panelSizeWords } from './doubts';
export type { Judgement } from './judge';
export { JOINT_TAKES_UP } from './panelFigures';
export type { EdgeRunOut, FigureName, JudgedFigure, PlaceVerdict, Verdict, WallVerdict } from './report';
export { limitsOf, type ToleranceSet, toleranceSets } from './tolerances';
export { GROSSLY_LEANING, GROSSLY_UNEVEN } from './wall';
export { type JudgedDiagnosis, withVerdicts } from './withVerdicts';

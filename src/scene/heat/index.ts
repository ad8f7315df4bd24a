export { BedView, type BedViewProps } from './BedView';
export { contourSteps, fittingStep, scaleRange } from './contour-steps';
export { type DrawnHeat, drawnHeat, type LengthWords, signed } from './drawn-heat';
export { HeatView } from './HeatView';
export { awayGradient, scaleColourText, scaleGradient } from './scale';
export { type Section, type SectionPoint, sectionPlace, sectionProfile } from './section';
export type { Reference, WallField } from './wall-field';

export { AlcoveView, type AlcoveViewProps } from './AlcoveView';
export {
  FinishedView,
  type FinishedViewProps,
  type Layers,
  type Photographer,
  type Side,
  type Viewpoint,
} from './client';
export type { Layer } from './geometry';
export {
  awayGradient,
  BedView,
  type BedViewProps,
  contourSteps,
  type DrawnHeat,
  drawnHeat,
  fittingStep,
  HeatView,
  type LengthWords,
  type Reference,
  type Section,
  type SectionPoint,
  scaleColourText,
  scaleGradient,
  scaleRange,
  sectionPlace,
  sectionProfile,
  signed,
  type WallField,
} from './heat';
export {
  type Projection,
  partColours,
  pointsInLasso,
  ScanView,
  type ScanViewProps,
  type ScreenPoint,
} from './scan';
export { WayView, type WayViewProps } from './way';

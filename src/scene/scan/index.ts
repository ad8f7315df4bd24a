export { type Projection, pointsInLasso, type ScreenPoint } from './lasso';
export { partColours } from './part-looks';
export { ScanView, type ScanViewProps } from './ScanView';

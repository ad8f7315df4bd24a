export { HeatPane } from './HeatPane';
export { ScaleBar, ticksOf } from './ScaleBar';

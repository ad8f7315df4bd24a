export { poseBetween } from './pose-between';
export { WayView, type WayViewProps } from './WayView';

export { FinishedView, type FinishedViewProps, type Side } from './FinishedView';
export { everyLayer, type Layers } from './layers';
export type { Photographer } from './Views';
export { standAt, type Viewpoint } from './viewpoint';

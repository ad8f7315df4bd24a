export { FinishedView, type FinishedViewProps, type Side } from './FinishedView';
export type { Layers } from './layers';
export type { Photographer } from './Views';
export type { Viewpoint } from './viewpoint';

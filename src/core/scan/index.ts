export { AXES, SURFACE_NAMES } from './axes';
export { type PointCloud, pointCount } from './cloud';
export { type CondenseOptions, condenseScan, type ScanCells } from './condense';
export { LABEL, LABEL_NAMES, type LabelName } from './labels';
export { frameAt, moved, movePoints, type RigidFrame, withOrigin } from './rigidFrame';
export { segmentScan } from './segment';
export type { NotSegmented, Segmented, SegmentOptions, SegmentQuality } from './segmented';
export { somePoints } from './somePoints';

export type { ReadingWatch, ScanFile } from './bytes';
export { type Extent, extentOf, guessUnit, guessUp, type ScanUnit, sizeOf, unitMillimetres } from './guess';
export { fewestPoints, type ScanLimits, scanLimits } from './limits';
export {
  type Cluster,
  clustersOf,
  labelCounts,
  pointsInBox,
  pointsLabelled,
  type Range,
  type Relabelled,
  relabel,
  takeBack,
} from './mend';
export type { RawScan, TableLayout, TableReading, TableSeparator, Up } from './raw-scan';
export { type ReadingOptions, readScan, type ScanRead } from './read-scan';
export { toCloud } from './to-cloud';

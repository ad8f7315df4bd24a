export { type CellScanOrder, cellScan } from './cellScan';
export { NO_ERRORS, type ScannerErrors, type ScanOrder, type SimulatedScan, scanOf, usualStations } from './scanner';
export type { Scene, Solid } from './scene';
export { clutteredScene, emptyScene } from './scenes';

export { type CellScanOrder, cellScan } from './cellScan';
export { NO_ERRORS, type ScannerErrors, type ScanOrder, type SimulatedScan, scanOf, usualStations } from './scanner';
export { firstHit, type Scene, type Solid } from './scene';
export { clutteredScene, emptyScene } from './scenes';

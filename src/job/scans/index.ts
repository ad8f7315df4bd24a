export { type ScanKept, type Scans, scansIn, type WholeScan } from './kept-scans';
export { condenseInWorker, findInWorker, readInWorker, type ScanWork } from './scan-work';

export {
  type CellNormals,
  type CondensedRows,
  cellNormals,
  condensedRows,
  type WeightedScan,
} from './condensedRows';
export { type ScanInUse, scanParameters, scansInUse } from './scanInUse';
export { type ScanReport, scanReports } from './scanReports';
export { weighScans } from './weighScans';

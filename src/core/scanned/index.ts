export {
  type CellNormals,
  type CondensedRows,
  cellNormals,
  condensedRows,
  type WeightedScan,
} from './condensedRows';
export { fewerCells } from './fewerCells';
export { type ScanInUse, scanParameters, scansInUse } from './scanInUse';
export { type ScanReport, type ScanSurfaceReport, scanReports } from './scanReports';
export { type PlacedCells, placedCells, type ResidualMap, shareSeen } from './surfaceDetail';
export { weighScans } from './weighScans';

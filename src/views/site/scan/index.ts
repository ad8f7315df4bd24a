export { ScanLook } from './ScanLook';
export { ScanPart } from './ScanPart';

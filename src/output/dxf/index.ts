export { dxfSafe } from './dxfSafe';
export { dxfText } from './dxfText';

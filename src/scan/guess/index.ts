export { type Extent, extentOf, sizeOf } from './extent';
export { guessUnit, type ScanUnit, unitMillimetres } from './unit';
export { guessUp } from './up';

export { decimalAt } from './decimal';
export { numbersIn, type Separator } from './fields';
export { isEmptyLine, startOfLine } from './line-text';
export { eachLine, type OnLine } from './lines';
export { blocksOf, bytesOf, type ReadingWatch, type ScanFile } from './source';

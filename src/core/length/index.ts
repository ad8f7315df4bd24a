export { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from './angle';
export { editableLength } from './editableLength';
export {
  type FractionDenominator,
  formatLength,
  type LengthFormat,
  type PrintedLength,
  printLength,
} from './formatLength';
export { formatPlusMinus } from './formatPlusMinus';
export { type ParsedLength, parseLength } from './parseLength';
export { type DisplayUnit, LONGEST_LENGTH, MM_PER_INCH } from './unit';

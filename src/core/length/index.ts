export { formatLength, formatPlusMinus, type LengthFormat, toFraction } from './format';
export { type ParsedLength, parseLength } from './parse';
export { type DisplayUnit, type FractionDenominator, MM_PER_INCH } from './unit';

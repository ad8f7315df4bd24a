export { type FittedTrim, fitTrim } from './fitTrim';

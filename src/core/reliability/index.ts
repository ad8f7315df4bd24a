export {
  DELTA_0,
  normalCritical,
  SINGLE_SIGNIFICANCE,
  tauCritical,
} from './criticalValues';
export { chiSquareTail } from './distributions';
export { type FieldEvidence, fieldEvidence } from './fieldEvidence';
export { type GroupTest, groupTest } from './groupTest';
export { type Given, given, type Residuals, residualCofactor, residualCorrelation } from './residuals';
export { type Blunder, type BlunderSearch, type SearchOptions, searchBlunders } from './search';
export { Z_95 } from './z95';

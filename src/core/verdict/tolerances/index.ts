export { type Limits, limitsOf, toleranceSets } from './limits';
export type { Limit, Property, ToleranceSet } from './toleranceSet';

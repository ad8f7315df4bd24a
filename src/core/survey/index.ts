export { angleSd, gapSd, lengthSd, straightedgeSd, tapeSd } from './instruments';
export { type Observation, observationsOf } from './observations';
export { cornerAngle } from './observe';
export { type TakenValue, takenValue } from './takenValue';

export { candidateReadings } from './candidates';
export { nextReading } from './nextReading';

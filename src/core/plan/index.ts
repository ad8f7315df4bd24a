export { candidateReadings } from './candidates';
export { cutEdges } from './cutEdges';
export { nextReading } from './nextReading';
export type { Unread } from './unread';

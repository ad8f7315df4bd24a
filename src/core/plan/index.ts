export { candidateReadings, type Density, FINE, USUAL } from './candidates';
export { cutEdges } from './cutEdges';
export { nextReading } from './nextReading';
export { type PlannedReading, type PlanOptions, surveyPlan } from './surveyPlan';
export type { Unread } from './unread';

export { type Adjustment, adjust, standardDeviation } from './adjust';
export { assumedParameters, CRITICAL_W, DELTA_0, findSuspect, readingReports } from './reliability';
export type { AdjustmentReport, NextReading, ReadingReport, Suspect } from './report';

export { blankJob } from './blank';
export { demoScan } from './demo-scan';
export { type Demo, demos, firstDemo } from './demos';
export { download } from './download';
export type { Draft, DraftFixture, DraftJob, DraftReading, DraftReadingOf, DraftStud } from './draft';
export type { DraftState } from './draft-store';
export { type EntryKind, fieldFault, isTemperature, sectionFault, slopeRun } from './entry';
export { historyAt } from './history';
export { jobFileName, jobFileStem, jobText } from './job-text';
export type { Incoming, JobsRead } from './jobs-file';
export { browserJournal, type Journal, noJournal } from './journal';
export {
  browserKeep,
  type Keep,
  type KeptJob,
  type KeptPhoto,
  type KeptScan,
  memoryKeep,
  openKeep,
  StorageFault,
  type StorageTrouble,
} from './keep';
export { loadJobsFile } from './load-jobs-file';
export { newStud } from './new-item';
export { type FieldPath, fieldKey, valueAt } from './path';
export { type AddedPhoto, type Photo, type Photos, photosIn } from './photos';
export { stockPlanner } from './plan-stock';
export { surveyPlanner } from './plan-survey';
export { SessionProvider, useDraft, useHistory, useSession, useSessionState } from './react';
export type { AlcoveFound } from './scan.worker';
export {
  condenseInWorker,
  findInWorker,
  readInWorker,
  type ScanKept,
  type Scans,
  type ScanWork,
  scansIn,
  type WholeScan,
} from './scans';
export { openSession, type Session, type SessionState } from './session';
export { type Done, deletedFor, found, type JobSummary, type Shelf, type ShelvedJob } from './shelf';
export { solveInWorker } from './solve-in-worker';
export { browserTabs, type TabListener, type Tabs } from './tabs';
export { type SetAside, usable } from './usable';

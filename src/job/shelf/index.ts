export { type Done, deletedFor, type Shelf, type ShelvedJob, shelfOf } from './shelf';
export { found, type JobSummary } from './summary';

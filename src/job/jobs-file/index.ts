export { limits } from './limits';
export { jobsFileName, packJobs } from './pack';
export { type Incoming, type JobsRead, readJobs, readJobsFile } from './read-jobs';

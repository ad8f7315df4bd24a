/** What packs and reads files of jobs, loaded when it is first needed. */
export const loadJobsFile = () => import('./jobs-file');

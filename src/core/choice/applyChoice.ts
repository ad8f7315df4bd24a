import type { Choice, Job } from '../job-file';

/** The job as it would be with a choice taken: what the choice says nothing about stays. */
export function applyChoice(job: Job, { finish, trim, shelves }: Choice): Job {
  return {
    ...job,
    finish: finish ?? job.finish,
    trim: trim === undefined ? job.trim : { ...job.trim, ...trim },
    shelves: shelves ?? job.shelves,
  };
}

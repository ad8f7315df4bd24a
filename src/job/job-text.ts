import type { Job } from '../core';

/** The text of a job file. */
export const jobText = (job: Job): string => `${JSON.stringify(job, null, 2)}\n`;

/** What the names of files made from the job begin with. */
export function jobFileStem(job: { name: string }): string {
  const stem = job.name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\w]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return stem || 'job';
}

/** A file name made from the job's name. */
export const jobFileName = (job: { name: string }): string => `${jobFileStem(job)}.json`;

import { type Job, type JobInput, parseJob, type Reading } from '../../src/core/job-file';

/** A job with these readings and choices, sheets that cover a common alcove, and every default filled in. */
export function jobWith(readings: Reading[], choices: Partial<JobInput> = {}): Job {
  const parsed = parseJob({
    format: 'nookwright-job',
    version: 1,
    readings,
    sheets: {
      back: { width: 1830, height: 2440 },
      left: { width: 915, height: 2440 },
      right: { width: 915, height: 2440 },
    },
    ...choices,
  } satisfies JobInput);
  if (!parsed.ok) throw new Error(parsed.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return parsed.job;
}

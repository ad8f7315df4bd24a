import { type Job, parseJob } from '../core';

export interface Demo {
  name: string;
  job: Job;
}

const files = import.meta.glob<unknown>('../../scenes/*.json', { eager: true, import: 'default' });

/** The demo jobs that come with the app, by file name. */
export const demos: readonly Demo[] = Object.entries(files).map(([file, value]) => {
  const parsed = parseJob(value);
  if (!parsed.ok) throw new Error(`${file}: ${parsed.faults[0]?.path} ${parsed.faults[0]?.message}`);
  return { name: parsed.job.name, job: parsed.job };
});

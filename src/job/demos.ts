import { type Job, parseJob } from '../core';

export interface Demo {
  file: string;
  name: string;
  job: Job;
}

const files = import.meta.glob<unknown>('../../scenes/*.json', { eager: true, import: 'default' });

/** The demo jobs that come with the app. */
export const demos: readonly Demo[] = Object.entries(files).map(([file, value]) => {
  const parsed = parseJob(value);
  if (!parsed.ok) throw new Error(`${file}: ${parsed.faults[0]?.path} ${parsed.faults[0]?.message}`);
  return { file: file.slice(file.lastIndexOf('/') + 1), name: parsed.job.name, job: parsed.job };
});

/** The demo that a first visit opens on: the one with the most to see. */
export const firstDemo: Job = (demos.find(({ file }) => file === 'skewed-bowed-wet-wall.json') ?? demos[0])!.job;

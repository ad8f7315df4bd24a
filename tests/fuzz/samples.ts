import { readdirSync, readFileSync } from 'node:fs';
import { type Job, parseJobText } from '../../src/core';
import { completeJob } from '../unit/core/job-file/completeJob';

const scenes = new URL('../../scenes/', import.meta.url);

/** The demo jobs' files, and a job with every field filled in. */
export const jobTexts: readonly string[] = [
  ...readdirSync(scenes)
    .filter((file) => file.endsWith('.json'))
    .map((file) => readFileSync(new URL(file, scenes), 'utf8')),
  JSON.stringify(completeJob()),
];

export const jobValues: readonly unknown[] = jobTexts.map((text) => JSON.parse(text));

export const jobs: readonly Job[] = jobTexts.map((text) => {
  const parsed = parseJobText(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
});

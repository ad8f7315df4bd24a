import skewed from '../../../scenes/skewed-bowed-wet-wall.json';
import { type Job, jobSchema, parseJob, type Result, solve } from '../../../src/core';

/** A demo job, solved: walls out of plumb and bowed, fixtures on the wet wall. */
export function solvedDemo(change: (job: Job) => Job = (job) => job): { job: Job; result: Result } {
  const parsed = parseJob(skewed);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const job = change(parsed.job);
  return { job, result: solve(job) };
}

/** The same with the flat, narrow trim that a job has by itself, and without shelves. */
export const plainlyTrimmedDemo = (): { job: Job; result: Result } =>
  solvedDemo((job) => ({
    ...job,
    trim: jobSchema.shape.trim.parse(undefined),
    legs: jobSchema.shape.legs.parse(undefined),
    shelves: [],
  }));

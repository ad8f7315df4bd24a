import type { Job, PlannedReading } from '../core';
import { workerCaller } from './call-worker';
import type { SurveyWorker } from './survey.worker';

const start = () => new Worker(new URL('./survey.worker.ts', import.meta.url), { type: 'module', name: 'survey' });

/** Plans, in a worker, what is still to be read beside the readings that a job has. Rejects where the worker stops twice. */
export function surveyPlanner(): (job: Job) => Promise<PlannedReading[]> {
  const call = workerCaller<SurveyWorker>(start, 'plans the survey');
  return (job) => call((remote) => remote.whatIsLeft(job));
}

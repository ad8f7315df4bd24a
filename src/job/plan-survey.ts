import { wrap } from 'comlink';
import type { Job, PlannedReading } from '../core';
import type { SurveyWorker } from './survey.worker';

/** Plans surveys in a worker of its own, started at the first call. Rejects where the worker stops. */
export function surveyPlanner(): (job: Job) => Promise<PlannedReading[]> {
  let worker: Worker | null = null;
  return (job) =>
    new Promise((resolve, reject) => {
      worker ??= new Worker(new URL('./survey.worker.ts', import.meta.url), { type: 'module', name: 'survey' });
      const stop = () => {
        worker?.terminate();
        worker = null;
        reject(new Error('the worker that plans the survey stopped'));
      };
      worker.addEventListener('error', stop, { once: true });
      wrap<SurveyWorker>(worker).surveyPlan(job).then(resolve, reject);
    });
}

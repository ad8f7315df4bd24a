import type { Job, Result } from '../core';
import { workerCaller } from './call-worker';
import type { SolverWorker } from './solver.worker';

const start = () => new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });

/** Turns jobs into results, in a worker. Rejects where the model throws, or where the worker stops twice. */
export function solveInWorker(): (job: Job) => Promise<Result> {
  const call = workerCaller<SolverWorker>(start, 'does the sums');
  return (job) => call((remote) => remote.solve(job));
}

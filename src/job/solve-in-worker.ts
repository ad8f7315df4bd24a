import { wrap } from 'comlink';
import type { Job, Result } from '../core';
import type { SolverWorker } from './solver.worker';

/** Starts the worker that turns jobs into results. */
export function solveInWorker(): (job: Job) => Promise<Result> {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
  const { solve } = wrap<SolverWorker>(worker);
  return (job) =>
    new Promise((resolve, reject) => {
      worker.addEventListener('error', () => reject(new Error('the worker that does the sums stopped')), {
        once: true,
      });
      solve(job).then(resolve, reject);
    });
}

import { wrap } from 'comlink';
import type { Job, Result, StockPlan } from '../core';
import type { StockWorker } from './stock.worker';

/**
 * Plans the trim's stock lengths in a worker of its own, which with its solver is loaded at the first call.
 * @returns null where the solver finds no plan; rejects where the worker stops, and starts a new one at the next call
 */
export function stockPlanner(): (result: Pick<Result, 'pieces'>, job: Job) => Promise<StockPlan | null> {
  let worker: Worker | null = null;
  return ({ pieces }, job) =>
    new Promise((resolve, reject) => {
      worker ??= new Worker(new URL('./stock.worker.ts', import.meta.url), { type: 'module', name: 'stock' });
      const stop = () => {
        worker?.terminate();
        worker = null;
        reject(new Error('the worker that plans stock lengths stopped'));
      };
      worker.addEventListener('error', stop, { once: true });
      wrap<StockWorker>(worker).plan({ trim: pieces.trim }, job).then(resolve, reject);
    });
}

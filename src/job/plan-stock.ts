import type { Job, Result, StockPlan } from '../core';
import { workerCaller } from './call-worker';
import type { StockWorker } from './stock.worker';

const start = () => new Worker(new URL('./stock.worker.ts', import.meta.url), { type: 'module', name: 'stock' });

/** The solver is given up after so long, ms. */
const LONGEST_MS = 30_000;

/**
 * Plans the trim's stock lengths in a worker of its own, which with its solver is loaded at the first call.
 * @returns null where the solver finds no plan; rejects where the worker stops twice or takes too long, and starts a new one at the next call
 */
export function stockPlanner(): (result: Pick<Result, 'pieces'>, job: Job) => Promise<StockPlan | null> {
  const call = workerCaller<StockWorker>(start, 'plans stock lengths', LONGEST_MS);
  return ({ pieces }, job) => call((remote) => remote.plan({ trim: pieces.trim }, job));
}

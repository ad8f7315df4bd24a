import { useEffect, useState } from 'react';
import type { Job, Result, StockPlan } from '../../core';
import { stockPlanner } from '../../job';

export type Planning =
  | { state: 'planning' }
  | { state: 'planned'; plan: StockPlan }
  /** `message`: why there is no plan */
  | { state: 'failed'; message: string; again: () => void };

const planner = stockPlanner();
const asked = new WeakMap<Result, Promise<StockPlan | null>>();

/** Plans once for a result, whoever asks. */
function planFor(result: Result, job: Job): Promise<StockPlan | null> {
  const known = asked.get(result);
  if (known) return known;
  const plan = planner(result, job);
  asked.set(result, plan);
  return plan;
}

/** Which length each piece of trim is cut from; asked of the solver, which is loaded at the first call. */
export function useStockPlan(result: Result, job: Job): Planning {
  const [attempt, setAttempt] = useState(0);
  const [planning, setPlanning] = useState<Planning>({ state: 'planning' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt asks again
  useEffect(() => {
    let current = true;
    setPlanning({ state: 'planning' });
    const failed = (message: string) => {
      asked.delete(result);
      const again = () => setAttempt((count) => count + 1);
      if (current) setPlanning({ state: 'failed', message, again });
    };
    planFor(result, job).then(
      (plan) => {
        if (plan === null) failed('the solver found none');
        else if (current) setPlanning({ state: 'planned', plan });
      },
      (error: unknown) => failed(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      current = false;
    };
  }, [result, job, attempt]);
  return planning;
}

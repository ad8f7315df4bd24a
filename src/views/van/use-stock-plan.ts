import { useEffect, useMemo, useState } from 'react';
import { type Job, type Result, type StockPlan, withStockPlan } from '../../core';
import { stockPlanner } from '../../job';

export type Planning =
  | { state: 'planning' }
  /** `of`: what was planned */
  | { state: 'planned'; plan: StockPlan; of: Result }
  /** `message`: why there is no plan */
  | { state: 'failed'; message: string; again: () => void };

const planner = stockPlanner();
const asked = new WeakMap<Result, Promise<StockPlan | null>>();

/** Plans once for a result, whoever asks; again where that failed. */
function planFor(result: Result, job: Job): Promise<StockPlan | null> {
  const known = asked.get(result);
  if (known) return known;
  const plan = planner(result, job);
  asked.set(result, plan);
  plan.then(
    (found) => found ?? asked.delete(result),
    () => asked.delete(result),
  );
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
      const again = () => setAttempt((count) => count + 1);
      if (current) setPlanning({ state: 'failed', message, again });
    };
    planFor(result, job).then(
      (plan) => {
        if (plan === null) failed('the solver found none');
        else if (current) setPlanning({ state: 'planned', plan, of: result });
      },
      (error: unknown) => failed(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      current = false;
    };
  }, [result, job, attempt]);
  return planning;
}

/** The result with its stock lengths planned and its trim counted by the plan; as it is where that fails. */
export const withLengthsPlanned = (result: Result, job: Job): Promise<Result> =>
  planFor(result, job).then(
    (plan) => withStockPlan(result, job, plan),
    () => result,
  );

/** `withLengthsPlanned` once the plan is there; until then the result as it is. */
export function useLengthsPlanned(result: Result, job: Job): Result {
  const planning = useStockPlan(result, job);
  return useMemo(
    () => (planning.state === 'planned' && planning.of === result ? withStockPlan(result, job, planning.plan) : result),
    [planning, result, job],
  );
}

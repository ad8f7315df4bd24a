import loadHighs from 'highs';
import { type Job, planStock, type Result, withStockPlan } from '../core';
import { highsSolver } from '../milp';

/** The result with the plan of stock lengths; without, should the solver fail. */
export async function withStock(result: Result, job: Job): Promise<Result> {
  const plan = await planStock(
    result,
    job,
    highsSolver(() => loadHighs()),
  );
  return withStockPlan(result, job, plan);
}

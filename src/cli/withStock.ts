import loadHighs from 'highs';
import { type Job, planStock, type Result } from '../core';
import { highsSolver } from '../milp';

/** The result with the plan of stock lengths; without, should the solver fail. */
export async function withStock(result: Result, job: Job): Promise<Result> {
  const stock = await planStock(
    result,
    job,
    highsSolver(() => loadHighs()),
  );
  return stock === null ? result : { ...result, stock };
}

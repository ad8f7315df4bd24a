import type { Job } from './job-file';
import type { StockPlan } from './layout';
import { trimAsPlanned } from './materials';
import type { Result } from './result';

/** The result with the plan of stock lengths (`planStock`), and its trim counted by it; as it is without a plan. */
export function withStockPlan(result: Result, job: Job, stock: StockPlan | null): Result {
  if (stock === null) return result;
  const { materials } = result;
  return { ...result, stock, materials: { ...materials, lines: trimAsPlanned(materials.lines, stock, job) } };
}

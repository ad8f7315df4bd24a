import { bestPattern } from './bestPattern';
import { firstFitPatterns } from './firstFit';
import type { SolveLinear } from './linearModel';
import { masterModel, splitPrices } from './master';
import type { Pattern, StockProblem } from './stockProblem';

/** The linear relaxation over all patterns. */
export interface Relaxation {
  patterns: Pattern[];
  objective: number;
  prices: { demand: number[]; stock: number[] };
}

const LEAST_GAIN = 1e-7;
const MOST_ROUNDS = 2000;

/**
 * Column generation (Gilmore and Gomory, 1961): the master over the patterns so far prices the demands, a knapsack finds
 * the pattern that those prices make worth most, until none is worth more than its bar. Null where the solver stops early.
 */
export async function relaxation(problem: StockProblem, solve: SolveLinear): Promise<Relaxation | null> {
  const patterns = firstFitPatterns(problem);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { status, objective, prices } = await solve(masterModel(problem, patterns, false));
    if (status !== 'optimal') return null;
    const split = splitPrices(problem, prices);
    const better = problem.stock.flatMap(({ length, cost }, stock): Pattern[] => {
      const { counts, price } = bestPattern(length, problem.demands, split.demand);
      const gain = price - (cost - split.stock[stock]!);
      return gain > LEAST_GAIN * Math.max(1, cost) ? [{ stock, counts }] : [];
    });
    if (better.length === 0) return { patterns, objective, prices: split };
    patterns.push(...better);
  }
  return null;
}

import { patternsWithin } from './allPatterns';
import type { SolveLinear } from './linearModel';
import { masterModel, uncutCost } from './master';
import { relaxation } from './relaxation';
import type { Pattern, StockProblem, StockSolution } from './stockProblem';

/** More patterns than this are not listed one by one. */
const MOST_PATTERNS = 20000;

/**
 * Cuts the demands from the stock at least cost: whole numbers of the patterns that the linear relaxation needed, and
 * where those miss the lower bound, of every pattern that a better solution could use. Exact, and `optimal` says so,
 * unless such patterns are too many or the solver stops early.
 * @returns null where the solver could not even solve the relaxation
 */
export async function solveStock(problem: StockProblem, solve: SolveLinear): Promise<StockSolution | null> {
  const relaxed = await relaxation(problem, solve);
  if (relaxed === null) return null;
  const step = commonStep(problem);
  const lowerBound = step === 0 ? relaxed.objective : step * Math.ceil(relaxed.objective / step - 1e-6);
  const near = 1e-6 * Math.max(...problem.stock.map(({ cost }) => cost));
  const first = await pick(problem, relaxed.patterns, solve);
  if (first === null) return null;
  if (first.total <= lowerBound + near) return finish(problem, first, lowerBound, true);

  const slack = first.total - step - relaxed.objective;
  const all = patternsWithin(
    problem.stock,
    problem.demands,
    relaxed.prices.demand,
    relaxed.prices.stock,
    Math.max(0, slack) + near,
    MOST_PATTERNS,
  );
  if (all === null) return finish(problem, first, lowerBound, false);
  const second = await pick(problem, [...relaxed.patterns, ...all], solve);
  const best = second !== null && second.total < first.total ? second : first;
  return finish(problem, best, lowerBound, second?.proven ?? false);
}

/** A choice of patterns; `total` counts pieces left uncut at their penalty. */
interface Choice {
  patterns: readonly Pattern[];
  times: number[];
  missing: number[];
  total: number;
  proven: boolean;
}

async function pick(problem: StockProblem, patterns: readonly Pattern[], solve: SolveLinear): Promise<Choice | null> {
  const { status, objective, values } = await solve(masterModel(problem, patterns, true));
  if (values.length === 0) return null;
  const whole = values.map(Math.round);
  return {
    patterns,
    times: whole.slice(0, patterns.length),
    missing: whole.slice(patterns.length),
    total: objective,
    proven: status === 'optimal',
  };
}

/** Every total is a multiple of this: the greatest common divisor of the costs where they are whole, else 0. */
function commonStep(problem: StockProblem): number {
  const costs = problem.stock.map(({ cost }) => cost);
  if (costs.every((cost) => Number.isInteger(cost) && cost > 0)) return costs.reduce(greatestCommonDivisor);
  return 0;
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

function finish(problem: StockProblem, choice: Choice, lowerBound: number, optimal: boolean): StockSolution {
  const left = problem.demands.map(({ count }, i) => count - choice.missing[i]!);
  const bars: StockSolution['bars'] = [];
  choice.patterns.forEach((pattern, k) => {
    for (let n = 0; n < choice.times[k]!; n++) {
      const counts = pattern.counts.map((count, i) => Math.min(count, left[i]!));
      counts.forEach((count, i) => {
        left[i]! -= count;
      });
      const same = bars.at(-1);
      if (same?.pattern.stock === pattern.stock && same.pattern.counts.join() === counts.join()) same.times++;
      else bars.push({ pattern: { stock: pattern.stock, counts }, times: 1 });
    }
  });
  const cost = bars.reduce((sum, { pattern, times }) => sum + times * problem.stock[pattern.stock]!.cost, 0);
  const uncut = choice.missing.reduce((sum, n) => sum + n, 0) * uncutCost(problem);
  return {
    bars,
    cost,
    lowerBound: optimal ? cost : Math.max(0, lowerBound - uncut),
    optimal,
    missing: choice.missing,
  };
}

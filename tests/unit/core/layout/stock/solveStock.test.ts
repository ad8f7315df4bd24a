import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { type StockProblem, solveStock } from '../../../../../src/core/layout/stock';
import { highsSolver } from '../../../../../src/milp';
import { type Random, randomFrom } from '../../../../simulate';

const solve = highsSolver(() => loadHighs());

describe('solveStock', () => {
  it('takes the stock length that wastes least', async () => {
    const problem = {
      stock: [
        { length: 20, cost: 20 },
        { length: 33, cost: 33 },
      ],
      demands: [{ length: 11, count: 3 }],
    };
    expect(await solveStock(problem, solve)).toEqual({
      bars: [{ pattern: { stock: 1, counts: [3] }, times: 1 }],
      cost: 33,
      lowerBound: 33,
      optimal: true,
      missing: [0],
    });
  });

  it('lists the pieces that limited stock leaves uncut, the fewest possible', async () => {
    const problem = {
      stock: [{ length: 10, cost: 1, most: 2 }],
      demands: [
        { length: 5, count: 3 },
        { length: 4, count: 3 },
      ],
    };
    const solution = (await solveStock(problem, solve))!;
    expect(solution).toMatchObject({ cost: 2, optimal: true });
    expect(solution.missing.reduce((a, b) => a + b)).toBe(2);
  });

  it('is exact where the patterns of the relaxation are not enough', async () => {
    const problem = {
      stock: [
        { length: 13, cost: 13 },
        { length: 18, cost: 17.5 },
      ],
      demands: [
        { length: 9, count: 2 },
        { length: 8, count: 3 },
        { length: 4, count: 1 },
        { length: 2, count: 1 },
      ],
    };
    const whole: number[] = [];
    const watched: typeof solve = async (model) => {
      const solution = await solve(model);
      if (model.columns.some(({ integer }) => integer)) whole.push(solution.objective);
      return solution;
    };
    const solution = (await solveStock(problem, watched))!;
    expect(whole).toEqual([52.5, 48]);
    expect(solution).toMatchObject({ cost: 48, lowerBound: 48, optimal: true });
    expect(leastCost(problem)).toBe(48);
  });

  it('agrees with trying everything on small random problems', async () => {
    const random = randomFrom(17);
    for (let trial = 0; trial < 40; trial++) {
      const problem = smallProblem(random, trial % 2 === 1);
      const solution = (await solveStock(problem, solve))!;
      expect(solution.optimal, JSON.stringify(problem)).toBe(true);
      expect(solution.cost, JSON.stringify(problem)).toBeCloseTo(leastCost(problem), 6);
      expectCovered(problem, solution.bars);
    }
  });

  it('passes on that the solver failed', async () => {
    const problem = { stock: [{ length: 10, cost: 1 }], demands: [{ length: 3, count: 1 }] };
    const broken = async () => ({ status: 'stopped' as const, objective: 0, values: [], prices: [] });
    expect(await solveStock(problem, broken)).toBeNull();
  });

  it('says that it is not sure when the solver stops at its limit with a solution', async () => {
    const problem = {
      stock: [
        { length: 10, cost: 3 },
        { length: 7, cost: 2.2 },
      ],
      demands: [
        { length: 4, count: 3 },
        { length: 3, count: 2 },
      ],
    };
    const hasty: typeof solve = async (model) => {
      const solution = await solve(model);
      return model.columns.some(({ integer }) => integer) ? { ...solution, status: 'stopped' } : solution;
    };
    const solution = (await solveStock(problem, hasty))!;
    expectCovered(problem, solution.bars);
    expect(solution.optimal).toBe(solution.cost <= solution.lowerBound + 1e-9);
  });
});

function smallProblem(random: Random, mixed: boolean): StockProblem {
  const demands = Array.from({ length: 4 }, (_, k) => ({
    length: Math.round(random.between(3, 9)) + 5 * (k % 3),
    count: Math.round(random.between(1, 2)),
  }));
  return {
    stock: mixed
      ? [
          { length: 20, cost: 20 },
          { length: 29, cost: 27.5 },
        ]
      : [{ length: 23, cost: 1 }],
    demands,
  };
}

function expectCovered(
  { stock, demands }: StockProblem,
  bars: { pattern: { stock: number; counts: readonly number[] }; times: number }[],
): void {
  const cut = demands.map((_, i) => bars.reduce((sum, { pattern, times }) => sum + times * pattern.counts[i]!, 0));
  expect(cut).toEqual(demands.map(({ count }) => count));
  for (const { pattern } of bars) {
    const used = pattern.counts.reduce((sum, count, i) => sum + count * demands[i]!.length, 0);
    expect(used).toBeLessThanOrEqual(stock[pattern.stock]!.length);
  }
}

/** Least cost by putting every piece, longest first, into every open bar and every new one. */
function leastCost({ stock, demands }: StockProblem): number {
  const pieces = demands.flatMap(({ length, count }) => new Array<number>(count).fill(length)).sort((a, b) => b - a);
  let best = Number.POSITIVE_INFINITY;
  const fill = (k: number, left: number[], cost: number): void => {
    if (cost >= best) return;
    if (k === pieces.length) {
      best = cost;
      return;
    }
    const piece = pieces[k]!;
    for (const room of new Set(left)) {
      if (room < piece) continue;
      const i = left.indexOf(room);
      fill(k + 1, left.with(i, room - piece), cost);
    }
    for (const { length, cost: price } of stock)
      if (length >= piece) fill(k + 1, [...left, length - piece], cost + price);
  };
  fill(0, [], 0);
  return best;
}

// Optima: see `source` in each data file. The bin packing sets are solved in full by `npm run bench -- cutting`.
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { type StockProblem, solveStock } from '../../../src/core/layout/stock';
import { highsSolver } from '../../../src/milp';
import binpack from '../data/binpack_falkenauer.json';
import cuttingStock from '../data/cutting_stock_1d.json';
import { packingProblem } from './packing';

const solve = highsSolver(() => loadHighs());
const QUICK = ['u120_00', 'u120_11', 'u120_17', 't60_00', 't60_05', 't60_11'];

describe.each(cuttingStock.instances)('$name', ({ stock, widths, demand, optimum, lp }) => {
  const problem: StockProblem = {
    stock: [{ length: stock, cost: 1 }],
    demands: widths.map((length, i) => ({ length, count: demand[i]! })),
  };

  it(`takes ${optimum} stock lengths, proven`, async () => {
    expect(await solveStock(problem, solve)).toMatchObject({ cost: optimum, lowerBound: optimum, optimal: true });
  });

  it(`has a linear relaxation of ${lp}`, async () => {
    const objectives: number[] = [];
    await solveStock(problem, async (model) => {
      const solution = await solve(model);
      if (!model.columns.some(({ integer }) => integer)) objectives.push(solution.objective);
      return solution;
    });
    expect(objectives.at(-1)).toBeCloseTo(lp, 6);
  });
});

describe.each(binpack.instances.filter(({ name }) => QUICK.includes(name)))('$name', (instance) => {
  it(`packs into ${instance.best_known} bins, proven`, async () => {
    expect(instance.proven_optimal).toBe(true);
    const solution = (await solveStock(packingProblem(instance), solve))!;
    expect(solution).toMatchObject({ cost: instance.best_known, optimal: true });
  });
});

it('waste of trim equals the optimum: 5600 mm stock, 73 bars, 0.401 %', async () => {
  const { stock, widths, demand } = cuttingStock.instances[1]!;
  const problem = {
    stock: [{ length: stock, cost: stock }],
    demands: widths.map((length, i) => ({ length, count: demand[i]! })),
  };
  const { cost } = (await solveStock(problem, solve))!;
  const cut = widths.reduce((sum, width, i) => sum + width * demand[i]!, 0);
  expect(100 * (1 - cut / cost)).toBeCloseTo(0.401, 3);
});

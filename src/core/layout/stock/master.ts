import type { Column, LinearModel } from './linearModel';
import type { Pattern, StockProblem } from './stockProblem';

/**
 * Which patterns to cut how often: rows are the demands, then the stock lengths of which there are only so many. The last
 * columns, one per demand, stand for pieces that stay uncut, at a cost no bar comes near.
 */
export function masterModel(problem: StockProblem, patterns: readonly Pattern[], integer: boolean): LinearModel {
  const { stock, demands } = problem;
  const limited = stock.flatMap(({ most }, s) => (most === undefined ? [] : [s]));
  const bars = patterns.map((pattern): Column => {
    const limit = limited.indexOf(pattern.stock);
    return {
      cost: stock[pattern.stock]!.cost,
      entries: [
        ...pattern.counts.flatMap((n, i): [number, number][] => (n > 0 ? [[i, n]] : [])),
        ...(limit < 0 ? [] : [[demands.length + limit, 1] as [number, number]]),
      ],
      integer,
    };
  });
  const uncut = demands.map((_, i): Column => ({ cost: uncutCost(problem), entries: [[i, 1]], integer }));
  return {
    columns: [...bars, ...uncut],
    rows: [
      ...demands.map(({ count }) => ({ low: count, high: Number.POSITIVE_INFINITY })),
      ...limited.map((s) => ({ low: 0, high: stock[s]!.most! })),
    ],
  };
}

/** Cost of leaving one piece uncut: more than the dearest bar, which could always have carried it. */
export const uncutCost = ({ stock }: StockProblem): number => 10 * stock.reduce((sum, { cost }) => sum + cost, 0);

/** Shadow prices of the master's rows, per demand and per stock length. */
export function splitPrices(problem: StockProblem, prices: readonly number[]): { demand: number[]; stock: number[] } {
  let row = problem.demands.length;
  return {
    demand: prices.slice(0, row).map((price) => Math.max(0, price)),
    stock: problem.stock.map(({ most }) => (most === undefined ? 0 : Math.min(0, prices[row++]!))),
  };
}

import type { StockProblem } from '../../../src/core/layout/stock';

/** A bin packing instance as a stock problem: sizes with one decimal become whole tenths. */
export function packingProblem({ capacity, items }: { capacity: number; items: readonly number[] }): StockProblem {
  const counts = new Map<number, number>();
  for (const item of items) counts.set(tenths(item), (counts.get(tenths(item)) ?? 0) + 1);
  return {
    stock: [{ length: tenths(capacity), cost: 1 }],
    demands: [...counts].map(([length, count]) => ({ length, count })),
  };
}

const tenths = (size: number): number => Math.round(10 * size);

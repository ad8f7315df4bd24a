import type { Pattern, StockProblem } from './stockProblem';

/**
 * Patterns of a first-fit-decreasing packing into each stock length, without limits: what column generation starts
 * from.
 */
export function firstFitPatterns({ stock, demands }: StockProblem): Pattern[] {
  const order = demands.map((_, i) => i).sort((a, b) => demands[b]!.length - demands[a]!.length);
  const patterns = new Map<string, Pattern>();
  stock.forEach(({ length: capacity }, s) => {
    const bars: { left: number; counts: number[] }[] = [];
    for (const i of order) {
      const { length, count } = demands[i]!;
      if (length > capacity) continue;
      for (let n = 0; n < count; n++) {
        let bar = bars.find(({ left }) => left >= length);
        if (bar === undefined) {
          bar = { left: capacity, counts: demands.map(() => 0) };
          bars.push(bar);
        }
        bar.left -= length;
        bar.counts[i]!++;
      }
    }
    for (const { counts } of bars) patterns.set(`${s}:${counts.join()}`, { stock: s, counts });
  });
  return [...patterns.values()];
}

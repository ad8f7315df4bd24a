import { NOTHING, type PriceStairs, priceWithin, withPieces } from './bestPrices';
import type { Demand, Pattern, StockLength } from './stockProblem';

/**
 * Every pattern of a stock length whose price comes within `slack` of its cost, longest demands first; null once there
 * are more than `limit`. With the prices of the linear relaxation and the gap to the best known solution as slack, no
 * better solution uses any other pattern (reduced-cost argument, as in Baldacci, Christofides and Mingozzi, 2008).
 */
export function patternsWithin(
  stock: readonly StockLength[],
  demands: readonly Demand[],
  prices: readonly number[],
  stockPrices: readonly number[],
  slack: number,
  limit: number,
): Pattern[] | null {
  const order = demands.map((_, i) => i).sort((a, b) => demands[b]!.length - demands[a]!.length);
  const found: Pattern[] = [];
  for (let s = 0; s < stock.length; s++) {
    const needed = stock[s]!.cost - stockPrices[s]! - slack - 1e-9;
    const bounds = bestRest(order, stock[s]!.length, demands, prices);
    const counts = demands.map(() => 0);
    const extend = (k: number, left: number, price: number): boolean => {
      if (price + bounds[k]!(left) < needed) return true;
      if (k === order.length) {
        if (counts.some((n) => n > 0)) found.push({ stock: s, counts: [...counts] });
        return found.length <= limit;
      }
      const i = order[k]!;
      const { length, count } = demands[i]!;
      for (let n = Math.min(count, Math.floor(left / length)); n >= 0; n--) {
        counts[i] = n;
        if (!extend(k + 1, left - n * length, price + n * Math.max(0, prices[i]!))) return false;
      }
      return true;
    };
    if (!extend(0, stock[s]!.length, 0)) return null;
  }
  return found;
}

/** Per place in the order, the greatest price that the demands from there on can get from a length. */
function bestRest(
  order: readonly number[],
  capacity: number,
  demands: readonly Demand[],
  prices: readonly number[],
): ((left: number) => number)[] {
  const stairs: PriceStairs[] = [NOTHING];
  for (const i of [...order].reverse()) {
    stairs.unshift(withPieces(stairs[0]!, demands[i]!, Math.max(0, prices[i]!), capacity));
  }
  return stairs.map((rest) => (left) => priceWithin(rest, left));
}

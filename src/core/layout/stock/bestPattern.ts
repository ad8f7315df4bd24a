import { NOTHING, type PriceStairs, priceWithin, withPieces } from './bestPrices';
import type { Demand } from './stockProblem';

/**
 * Pattern of greatest total price from one stock length: bounded knapsack over the lengths that can be reached (Gilmore
 * and Gomory, A linear programming approach to the cutting-stock problem, 1961). Exact; what has no price stays out.
 */
export function bestPattern(
  capacity: number,
  demands: readonly Demand[],
  prices: readonly number[],
): { counts: number[]; price: number } {
  const worth = demands.flatMap((demand, i) => (prices[i]! > 0 && demand.length <= capacity ? [{ ...demand, i }] : []));
  const layers: PriceStairs[] = [NOTHING];
  for (const each of worth) layers.push(withPieces(layers.at(-1)!, each, prices[each.i]!, capacity));

  const counts = demands.map(() => 0);
  const best = priceWithin(layers.at(-1)!, capacity);
  let left = capacity;
  let price = best;
  for (let k = worth.length - 1; k >= 0; k--) {
    const { i, length } = worth[k]!;
    const before = (n: number): number => priceWithin(layers[k]!, left - n * length);
    let n = 0;
    while (before(n) + n * prices[i]! < price - 1e-9) n++;
    counts[i] = n;
    price = before(n);
    left -= n * length;
  }
  return { counts, price: best };
}

/** Greatest price by length used, as a rising staircase: each entry is longer and dearer than the one before. */
export type PriceStairs = readonly (readonly [used: number, price: number])[];

export const NOTHING: PriceStairs = [[0, 0]];

/** The staircase once up to `count` pieces of a length may be added, each at a price, within the capacity. */
export function withPieces(
  stairs: PriceStairs,
  { length, count }: { length: number; count: number },
  price: number,
  capacity: number,
): PriceStairs {
  const best = new Map(stairs);
  for (const [used, total] of stairs) {
    for (let n = 1; n <= count && used + n * length <= capacity; n++) {
      const at = used + n * length;
      const dearer = total + n * price;
      if (dearer > (best.get(at) ?? Number.NEGATIVE_INFINITY)) best.set(at, dearer);
    }
  }
  const kept: [number, number][] = [];
  for (const [at, total] of [...best].sort(([a], [b]) => a - b)) {
    if (total > (kept.at(-1)?.[1] ?? Number.NEGATIVE_INFINITY)) kept.push([at, total]);
  }
  return kept;
}

/** Greatest price that fits in a length. */
export function priceWithin(stairs: PriceStairs, length: number): number {
  let low = 0;
  let high = stairs.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (stairs[middle]![0] <= length) low = middle;
    else high = middle - 1;
  }
  return stairs[low]![1];
}

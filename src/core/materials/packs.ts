/** Whole packs to buy. `size` and `leftOver` are in the quantity's unit. */
export interface Packs {
  size: number;
  count: number;
  leftOver: number;
}

/** Whole packs that hold at least the quantity, and what is left over. */
export function packsFor(quantity: number, size: number): Packs {
  const count = Math.max(0, Math.ceil(quantity / size - 1e-9));
  return { size, count, leftOver: Math.max(0, count * size - quantity) };
}

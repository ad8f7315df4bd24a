/**
 * Numbers at even steps, both ends among them.
 * @param count how many; 1 gives `from` alone
 */
export const spaced = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, k) => (k === 0 ? from : from + ((to - from) * k) / (count - 1)));

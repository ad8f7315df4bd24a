/** Values counted in steps. */
export interface Crowds {
  /** steps that hold a value, by their number: step k reaches from k to k + 1 times its size */
  steps: number[];
  /** how many values a step and its two neighbours hold */
  crowd(k: number): number;
}

export function crowdsOf(values: Iterable<number>, size: number): Crowds {
  const counts = new Map<number, number>();
  for (const value of values) {
    const k = Math.floor(value / size);
    counts.set(k, (counts.get(k) ?? 0) + 1);
  }
  const at = (k: number): number => counts.get(k) ?? 0;
  return { steps: [...counts.keys()], crowd: (k) => at(k - 1) + at(k) + at(k + 1) };
}

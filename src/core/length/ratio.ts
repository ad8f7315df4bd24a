/**
 * A fraction of two whole numbers. Sums and products stay exact while both fit in 53 bits, so that a length is rounded
 * once, when it is divided out.
 */
export interface Ratio {
  readonly above: number;
  readonly below: number;
}

export const ratio = (above: number, below = 1): Ratio => ({ above, below });

export const sum = (a: Ratio, b: Ratio): Ratio =>
  a.below === b.below
    ? ratio(a.above + b.above, a.below)
    : ratio(a.above * b.below + b.above * a.below, a.below * b.below);

export const product = (a: Ratio, b: Ratio): Ratio => ratio(a.above * b.above, a.below * b.below);

export const quotient = ({ above, below }: Ratio): number => above / below;

/** The same fraction in lowest terms; both parts whole, neither below zero. */
export function reduced({ above, below }: Ratio): Ratio {
  let [divisor, rest] = [below, above];
  while (rest > 0) [divisor, rest] = [rest, divisor % rest];
  return ratio(above / divisor, below / divisor);
}

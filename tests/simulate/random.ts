/** Source of random numbers that repeats for the same seed. */
export interface Random {
  /** evenly in [low, high) */
  between(low: number, high: number): number;
  /** normal, redrawn until within `cut` standard deviations of the mean */
  normal(mean: number, sd: number, cut?: number): number;
}

/** Mulberry32 (public domain; from memory) and the polar method of Marsaglia and Bray (1964). */
export function randomFrom(seed: number): Random {
  let state = (seed ^ 0x9e3779b9) >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const standard = (): number => {
    for (;;) {
      const a = 2 * unit() - 1;
      const b = 2 * unit() - 1;
      const square = a * a + b * b;
      if (square > 0 && square < 1) return a * Math.sqrt((-2 * Math.log(square)) / square);
    }
  };
  return {
    between: (low, high) => low + (high - low) * unit(),
    normal(mean, sd, cut = 6) {
      for (;;) {
        const draw = standard();
        if (Math.abs(draw) <= cut) return mean + sd * draw;
      }
    },
  };
}

import type fc from 'fast-check';

/** Something that reads what strangers wrote, and what must hold whatever they wrote. */
export interface Target<T = unknown> {
  /** The word that `npm run fuzz -- NAME` takes. */
  name: string;
  /** One sentence: what is tried on what. */
  about: string;
  cases: fc.Arbitrary<T>;
  /** @throws where a case breaks what must hold */
  check(given: T): void | Promise<void>;
  /** cases in the test command; those of `npm run fuzz` are shared out in proportion */
  inTests: number;
}

export const target = <T>(given: Target<T>): Target => given as unknown as Target;

/** @throws with the sentence where it does not hold */
export function must(holds: boolean, sentence: string): asserts holds {
  if (!holds) throw new Error(sentence);
}

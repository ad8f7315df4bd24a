import fc from 'fast-check';
import type { Target } from './target';

/** Tries so many cases of a target, the same ones for the same seed. A sentence where one fails, shrunk; null otherwise. */
export async function tryCases({ name, cases, check }: Target, seed: number, count: number): Promise<string | null> {
  const property = fc.asyncProperty(cases, async (given) => {
    await check(given);
  });
  const run = await fc.check(property, { seed, numRuns: count });
  if (!run.failed) return null;
  const given = fc.stringify(run.counterexample?.[0]);
  const why = run.errorInstance instanceof Error ? (run.errorInstance.stack ?? '') : String(run.errorInstance);
  return `${name}, seed ${seed}, path ${run.counterexamplePath}: ${why}\n  on ${given.slice(0, 4000)}`;
}

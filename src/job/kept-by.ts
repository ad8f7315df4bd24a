/**
 * Runs `work` once for inputs of one key, also while it runs, and hands out what it made. The `most` keys asked for last
 * are kept; what failed is tried again.
 */
export function keptBy<In, Out>(
  keyOf: (input: In) => string,
  most: number,
  work: (input: In) => Promise<Out>,
): (input: In) => Promise<Out> {
  const kept = new Map<string, Promise<Out>>();
  return (input) => {
    const key = keyOf(input);
    const made = kept.get(key) ?? work(input);
    kept.delete(key);
    kept.set(key, made);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    made.catch(() => kept.get(key) === made && kept.delete(key));
    return made;
  };
}

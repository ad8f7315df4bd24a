/** Runs `work`, but hands out what it made last where the next input has the same key. What failed is tried again. */
export function keptBy<In, Out>(
  keyOf: (input: In) => string,
  work: (input: In) => Promise<Out>,
): (input: In) => Promise<Out> {
  let last: { key: string; output: Out } | null = null;
  return async (input) => {
    const key = keyOf(input);
    if (last?.key !== key) last = { key, output: await work(input) };
    return last.output;
  };
}

/**
 * Milliseconds that one call of each function takes: the median over rounds in which the functions take turns, so that
 * a slower moment of the machine falls on all of them alike.
 * @param works by name; each is called once before the clock starts
 */
export function timeTogether<Name extends string>(
  works: Record<Name, () => unknown>,
  { rounds = 21, leastMs = 5 } = {},
): Record<Name, number> {
  const names = Object.keys(works) as Name[];
  const calls = Object.fromEntries(names.map((name) => [name, callsFor(works[name], leastMs)])) as Record<Name, number>;
  const times = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<Name, number[]>;
  for (let round = 0; round < rounds; round++) {
    for (const name of names) times[name].push(timeOf(works[name], calls[name]) / calls[name]);
  }
  return Object.fromEntries(names.map((name) => [name, share(times[name], 0.5)])) as Record<Name, number>;
}

/** The value that this part (0 to 1) of the values lies at or under. */
export function share(values: readonly number[], part: number): number {
  if (values.length === 0) throw new Error('no values');
  return values.toSorted((a, b) => a - b)[Math.round(part * (values.length - 1))]!;
}

function callsFor(work: () => unknown, leastMs: number): number {
  work();
  let calls = 1;
  while (timeOf(work, calls) < leastMs) calls *= 2;
  return calls;
}

let kept: unknown;

function timeOf(work: () => unknown, calls: number): number {
  const began = performance.now();
  for (let call = 0; call < calls; call++) kept = work();
  const took = performance.now() - began;
  if (kept === timeOf) throw new Error('a bench must not return its own clock');
  return took;
}

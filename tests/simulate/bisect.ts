/** Root of a continuous function that rises or falls through zero between `low` and `high`, to the last bit. */
export function bisect(f: (x: number) => number, low: number, high: number): number {
  const atLow = f(low);
  if (atLow === 0) return low;
  if (atLow > 0 === f(high) > 0) throw new Error(`no change of sign between ${low} and ${high}`);
  let [a, b] = [low, high];
  for (;;) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) return middle;
    if (f(middle) > 0 === atLow > 0) a = middle;
    else b = middle;
  }
}

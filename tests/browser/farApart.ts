/**
 * Two engines may differ in the last bits, and what is solved step by step, in some more: relative, below 1 absolute.
 * A figure of result.json is rounded to 1e-4, either way where it is half-way: the next one is still alike.
 */
const ALIKE = 1.5e-4;

/** Where two values as JSON has them differ, numbers by more than engines do; empty where they are alike. */
export function farApart(a: unknown, b: unknown, path = ''): string[] {
  if (typeof a === 'number' && typeof b === 'number') {
    return Math.abs(a - b) <= ALIKE * Math.max(1, Math.abs(a)) ? [] : [`${path}: ${a}, ${b}`];
  }
  if (a === null || b === null || typeof a !== 'object' || typeof b !== 'object') {
    return a === b ? [] : [`${path}: ${JSON.stringify(a)}, ${JSON.stringify(b)}`];
  }
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return keys.flatMap((key) =>
    farApart((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`),
  );
}

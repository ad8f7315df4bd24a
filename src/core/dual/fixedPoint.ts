import type { Dual } from './dual';

/** Solutions farther than this from the start are no part of an alcove, mm. */
const REACH = 5000;
const MOST_STEPS = 40;
/** Where the map's slope comes this near to 1 the solution slides along; its derivatives are held finite. */
const LEAST_STIFFNESS = 1e-3;

/**
 * Solves x = next(x) by Wegstein's secant iteration (1958), within 5 m of the start. The maps used here move by a
 * wall's slope for each mm, so three or four steps do; where walls are so wild that no solution is found, the map's
 * value at the start stands in for it.
 */
export function fixedValue(next: (x: number) => number, start: number): number {
  const held = (x: number): number => Math.min(Math.max(x, start - REACH), start + REACH);
  const first = held(next(start));
  let before = { x: start, off: first - start };
  let x = first;
  for (let step = 0; step < MOST_STEPS; step++) {
    const off = held(next(x)) - x;
    if (Math.abs(off) <= 1e-12 * (1 + Math.abs(x))) return x + off;
    const bend = off - before.off;
    const ahead = bend === 0 ? x + off : held(x - (off * (x - before.x)) / bend);
    before = { x, off };
    x = ahead;
  }
  return first;
}

/**
 * Solves x = next(x), derivatives included: dx/dp = (∂next/∂p) / (1 − ∂next/∂x). One more evaluation, with the first
 * derivatives fed back in, gives the slope ∂next/∂x.
 */
export function fixedPoint(next: (x: Dual) => Dual, start: number): Dual {
  const value = fixedValue((x) => next({ value: x, gradient: null }).value, start);
  const direct = next({ value, gradient: null }).gradient;
  if (direct === null) return { value, gradient: null };
  const fedBack = next({ value, gradient: direct }).gradient!;
  const square = product(direct, direct);
  if (square === 0) return { value, gradient: null };
  return impliedPoint(value, direct, product(fedBack, direct) / square - 1);
}

/**
 * The solution x of x = next(x) with its derivatives, by the implicit function theorem.
 * @param direct derivatives of next with respect to the parameters, x held
 * @param slope ∂next/∂x
 */
export function impliedPoint(value: number, direct: Float64Array, slope: number): Dual {
  const stiffness = 1 - slope;
  const held = Math.abs(stiffness) < LEAST_STIFFNESS ? Math.sign(stiffness || 1) * LEAST_STIFFNESS : stiffness;
  return { value, gradient: direct.map((partial) => finiteOrZero(partial / held)) };
}

/** On walls so wild that a derivative overflows, none is told. */
const finiteOrZero = (x: number): number => (Number.isFinite(x) ? x : 0);

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

import { conjugateGradients, magnitude } from './conjugate';
import { multigridCycle } from './cycle';
import type { Plate } from './plates';
import { type Stencil, times } from './stencil';

/** A quadratic energy ½xᵀAx + fᵀx to be made least among x ≥ floor. */
export interface Obstructed {
  /** whose energy it is, on the grid of x and on all coarser ones, finest first */
  plates: readonly Plate[];
  /** f: what pushes towards the floor where positive, N */
  load: Float64Array;
  floor: Float64Array;
}

/** Where to begin: coefficients, and which of them lie on the floor. */
export interface Start {
  coefficients: Float64Array;
  held: Uint8Array;
}

export interface Settled extends Start {
  /** what the floor pushes back with, N: zero where the sheet is off it */
  reaction: Float64Array;
  /** share of the load out of balance after each step, first to last */
  imbalance: number[];
  converged: boolean;
}

/** By how much the tie of a step to the one before is loosened once the held splines stay the same. */
const LOOSER = 0.01;
/** So many changes of what is held in a row, and the tie is tightened again. */
const PATIENCE = 25;
/**
 * Share of a step's error, in the norm of energy, that the linear solver may leave; and where what is held will not
 * settle, so that a rough step is not trusted.
 */
const FORCING = 0.2;
const STRICT = 1e-3;
/** Share of the load that it may leave: what lies on the floor is let go by forces no larger than that. */
const FAIR = 0.5;
const LONG = 12;

/**
 * Primal-dual active set: with some splines held on the floor the others find their balance; those that come to lie
 * below are held next, those that would lift are let go (Hintermüller, Ito and Kunisch, SIAM J. Optim. 13 (2003)
 * 865–888). Each balance is found only as nearly as the next set needs (Dembo, Eisenstat and Steihaug, SIAM J. Numer.
 * Anal. 19 (1982) 400–408). A weak even spring ties each step to the one before (proximal point) and is loosened by and
 * by, so that a sheet that touches in fewer than three places moves no further than it may have to.
 *
 * @param way how far, mm, the sheet may have to go
 * @param tolerance share of the load that may be out of balance
 */
export function settle(
  { plates, load, floor }: Obstructed,
  start: Start,
  way: number,
  tolerance: number,
  mostSteps = 120,
): Settled {
  const { matrix, areas } = plates[0]!;
  const size = floor.length;
  const cycle = multigridCycle(
    plates.map((plate) => plate.matrix),
    areas,
  );
  const total = magnitude(load) || 1;
  const enough = 0.1 * tolerance * total;
  const x = Float64Array.from(start.coefficients);
  const forces = new Float64Array(size);
  const imbalance: number[] = [];
  let { held } = start;
  let changes = 0;
  let tie = total / magnitude(areas) / Math.max(way, 1e-9);
  const [depth, pull] = [1e-7 * way, (tolerance * total) / size];

  layDown(x, floor, held);
  netForces(matrix, load, x, forces);
  for (;;) {
    const before = Float64Array.from(x);
    const against = forces.map((force, k) => (held[k] ? 0 : -force));
    const step = new Float64Array(size);
    const balance = (share: number): Uint8Array => {
      conjugateGradients(cycle, against, step, { enough, fair: FAIR * total, share });
      for (let k = 0; k < size; k++) x[k] = before[k]! + step[k]!;
      netForces(matrix, load, x, forces);
      return nextHeld(x, floor, held, forces, depth, pull);
    };
    cycle.load(held, tie);
    let next = balance(changes < LONG ? FORCING : STRICT);
    if (fallsInto(held, next)) next = balance(STRICT);

    const left = outOfBalance(forces, next) / total;
    imbalance.push(left);
    const same = next.every((value, k) => value === held[k]);
    held = next;
    if ((same && left <= tolerance) || imbalance.length >= mostSteps) {
      const reaction = forces.map((force, k) => (next[k] ? Math.max(0, force) : 0));
      return { coefficients: x, held, reaction, imbalance, converged: same && left <= tolerance };
    }
    changes = same ? 0 : changes + 1;
    if (same) tie *= LOOSER;
    else if (changes % PATIENCE === 0) tie /= LOOSER;
    if (layDown(x, floor, held)) netForces(matrix, load, x, forces);
  }
}

/** Puts what is held on the floor; false where all of it lay there. */
function layDown(x: Float64Array, floor: Float64Array, held: Uint8Array): boolean {
  let moved = false;
  for (let k = 0; k < x.length; k++) {
    if (!held[k] || x[k] === floor[k]) continue;
    x[k] = floor[k]!;
    moved = true;
  }
  return moved;
}

/** More has come to lie below the floor than had been held: so far a rough step must not lead. */
function fallsInto(held: Uint8Array, next: Uint8Array): boolean {
  let [had, taken] = [0, 0];
  for (let k = 0; k < held.length; k++) {
    had += held[k]!;
    if (next[k] && !held[k]) taken++;
  }
  return had > 0 && taken > had;
}

/** A x + f. */
function netForces(matrix: Stencil, load: Float64Array, x: Float64Array, out: Float64Array): void {
  times(matrix, x, out);
  for (let k = 0; k < out.length; k++) out[k] = (out[k] as number) + (load[k] as number);
}

/** Held next: what is held and pushed on, and what has come to lie below the floor. */
const nextHeld = (
  x: Float64Array,
  floor: Float64Array,
  held: Uint8Array,
  forces: Float64Array,
  depth: number,
  pull: number,
): Uint8Array =>
  held.map((on, k) =>
    (on ? (forces[k] as number) >= -pull : (x[k] as number) < (floor[k] as number) - depth) ? 1 : 0,
  );

/** Sum of the forces that nothing answers: all of them off the floor, only what would lift on it. */
function outOfBalance(forces: Float64Array, held: Uint8Array): number {
  let sum = 0;
  for (let k = 0; k < forces.length; k++) {
    const force = forces[k] as number;
    sum += held[k] ? Math.max(0, -force) : Math.abs(force);
  }
  return sum;
}

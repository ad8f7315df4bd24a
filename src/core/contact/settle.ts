import { conjugateGradients, magnitude } from './conjugate';
import { multigridCycle } from './cycle';
import { withoutRows } from './free';
import { type SplineGrid, stackOf } from './splineGrid';
import { SIZE, type Stencil, times } from './stencil';

/** A quadratic energy ½xᵀAx + fᵀx to be made least among x ≥ floor. */
export interface Obstructed {
  grid: SplineGrid;
  matrix: Stencil;
  /** f: what pushes towards the floor where positive, N */
  load: Float64Array;
  floor: Float64Array;
  /** ∫∫ of each spline, mm² */
  areas: Float64Array;
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
/** Share of a step's imbalance that the linear solver may leave. */
const FORCING = 0.03;

/**
 * Primal-dual active set: with some splines held on the floor the others find their balance; those that come to lie
 * below are held next, those that would lift are let go (Hintermüller, Ito and Kunisch, SIAM J. Optim. 13 (2003)
 * 865–888). A weak even spring ties each step to the one before (proximal point) and is loosened by and by, so that a
 * sheet that touches in fewer than three places moves no further than it may have to.
 *
 * @param way how far, mm, the sheet may have to go
 * @param tolerance share of the load that may be out of balance
 */
export function settle(
  { grid, matrix, load, floor, areas }: Obstructed,
  start: Start,
  way: number,
  tolerance: number,
  mostSteps = 120,
): Settled {
  const { across, up } = grid;
  const size = across * up;
  const cycle = multigridCycle(stackOf(grid));
  const free: Stencil = { across, up, entries: new Float64Array(size * SIZE) };
  const total = magnitude(load) || 1;
  const x = Float64Array.from(start.coefficients);
  const forces = new Float64Array(size);
  const imbalance: number[] = [];
  let { held } = start;
  let changes = 0;
  let tie = total / magnitude(areas) / Math.max(way, 1e-9);

  for (;;) {
    for (let k = 0; k < size; k++) if (held[k]) x[k] = floor[k] as number;
    netForces(matrix, load, x, forces);
    for (let k = 0; k < size; k++) forces[k] = held[k] ? 0 : -(forces[k] as number);
    withoutRows(matrix, held, areas, tie, free);
    cycle.load(free);
    const step = new Float64Array(size);
    conjugateGradients(free, cycle, forces, step, Math.max(FORCING * magnitude(forces), 0.1 * tolerance * total));
    for (let k = 0; k < size; k++) x[k] = (x[k] as number) + (step[k] as number);

    netForces(matrix, load, x, forces);
    const next = nextHeld(x, floor, held, forces, 1e-7 * way, (tolerance * total) / size);
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
  }
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

import { platesOn } from './plates';
import { heightOf, restOn } from './restingPlane';
import { type Settled, type Start, settle } from './settle';
import { centreOf, coefficientsOf, type SplineGrid, splineGrid } from './splineGrid';
import { areasOf } from './stencil';
import type { BendingStiffness } from './stiffness';
import { prolong } from './twoGrid';

/** How a sheet sits: its shape, where the wall holds it up, and how well that is known to balance. */
export interface Pressed extends Settled {
  grid: SplineGrid;
  /** bending energy less the work of the pressure, N·mm, counted from the level u, v plane */
  energy: number;
  /** on each grid, coarsest first, the last one's included: the same counted from the wall; cells along u and v */
  energies: { columns: number; rows: number; energy: number }[];
  /** true where the sheet bends so little that it counts as rigid and rests on three points exactly */
  rigid: boolean;
}

export interface Rectangle {
  u: readonly [number, number];
  v: readonly [number, number];
}

/**
 * Share of the load that may be out of balance on the grids that only prepare the start, and on the last but one, whose
 * energy is shown beside the last one's: it is off by the square of that.
 */
const ROUGH = 1e-2;
const FAIR = 1e-3;
/** A sheet that would sag no more than this, mm, over its whole length counts as rigid. */
const RIGID = 0.02;
/** A finer grid begins near its answer and moves with little hindrance: so many times further than the wall is deep. */
const LATER = 1e5;

/**
 * A thin elastic sheet pressed evenly against a wall: least bending energy less the work of the pressure, among all
 * shapes that stay off the wall. Found on a coarse grid first, then on ever finer ones.
 *
 * @param height the wall, mm, growing towards the room, in the sheet's coordinates
 * @param region what the sheet covers, mm
 * @param pressure towards the wall, N/mm²
 * @param options cells along u and v, best a power of two times a small number; share of the load that may be out of
 * balance at the end
 */
export function pressSheet(
  height: (u: number, v: number) => number,
  region: Rectangle,
  stiffness: BendingStiffness,
  pressure: number,
  { columns, rows, tolerance }: { columns: number; rows: number; tolerance: number },
): Pressed {
  const finest = splineGrid(region, columns, rows);
  if (isRigid(stiffness, region, pressure)) return restSheet(height, finest, region, pressure);
  let pressed: Pressed | null = null;
  const energies: Pressed['energies'] = [];
  const all = platesOn(finest, stiffness);
  for (let level = all.length - 1; level >= 0; level--) {
    const plates = all.slice(level);
    const { grid, areas } = plates[0]!;
    const floor = coefficientsOf(grid, height);
    const load = areas.map((area) => area * pressure);
    const problem = { plates, load, floor };
    const depth = depthOf(floor);
    const enough = level === 0 ? tolerance : level === 1 ? Math.max(tolerance, FAIR) : ROUGH;
    const quick: Settled | null = pressed && settle(problem, refined(pressed, grid, floor), depth * LATER, enough);
    const settled: Settled = quick?.converged ? quick : settle(problem, flatStart(floor), depth, enough);
    const energy = energyOf(settled, load, floor);
    const fromWall = energy - load.reduce((sum, force, k) => sum + force * (floor[k] as number), 0);
    energies.push({ columns: grid.columns, rows: grid.rows, energy: fromWall });
    pressed = { grid, ...settled, energy, energies, rigid: false };
  }
  return pressed as Pressed;
}

/** A long free strip under even load sags pL⁴/64D at most about its middle support: less than can be measured. */
export function isRigid({ u, v }: BendingStiffness, region: Rectangle, pressure: number): boolean {
  const length = Math.max(region.u[1] - region.u[0], region.v[1] - region.v[0]);
  return (pressure * length ** 4) / (64 * Math.min(u, v)) < RIGID;
}

/** The sheet as a plane on three of the wall's high points. */
function restSheet(
  height: (u: number, v: number) => number,
  grid: SplineGrid,
  region: Rectangle,
  pressure: number,
): Pressed {
  const places: [number, number][] = [];
  for (let j = 0; j <= grid.rows; j++) {
    for (let i = 0; i <= grid.columns; i++) places.push([grid.u0 + i * grid.cellWidth, grid.v0 + j * grid.cellHeight]);
  }
  const plane = restOn(height, region, places);
  const { across, up } = grid;
  const coefficients = new Float64Array(across * up);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) coefficients[i + j * across] = heightOf(plane, ...centreOf(grid, i, j));
  }
  const nothing = new Float64Array(across * up);
  const energy = areasOf(grid).reduce((sum, area, k) => sum + area * pressure * (coefficients[k] as number), 0);
  const held = new Uint8Array(across * up);
  const energies = [{ columns: grid.columns, rows: grid.rows, energy }];
  return {
    grid,
    coefficients,
    held,
    reaction: nothing,
    imbalance: [0],
    converged: true,
    energy,
    energies,
    rigid: true,
  };
}

export const depthOf = (floor: Float64Array): number => {
  let [low, high] = [Infinity, -Infinity];
  for (const value of floor) [low, high] = [Math.min(low, value), Math.max(high, value)];
  return high - low || 1;
};

/**
 * In balance Ax = reaction − load, so that ½xᵀAx + loadᵀx = ½ (loadᵀx + reactionᵀfloor).
 */
export function energyOf({ coefficients, reaction }: Settled, load: Float64Array, floor: Float64Array): number {
  return load.reduce(
    (sum, force, k) => sum + (force * (coefficients[k] as number) + (reaction[k] as number) * (floor[k] as number)) / 2,
    0,
  );
}

/** The same shape on a finer grid; held where all about it was held, or where it has come to lie in the wall. */
function refined({ coefficients, held }: Pressed, { across, up }: SplineGrid, floor: Float64Array): Start {
  const start = new Float64Array(across * up);
  const share = new Float64Array(across * up);
  prolong(coefficients, start, across, up);
  prolong(Float64Array.from(held), share, across, up);
  return {
    coefficients: start,
    held: Uint8Array.from(start, (value, k) => ((share[k] as number) > 0.5 || value < (floor[k] as number) ? 1 : 0)),
  };
}

/** A flat sheet that stands just off the wall. */
const flatStart = (floor: Float64Array): Start => ({
  coefficients: new Float64Array(floor.length).fill(floor.reduce((most, value) => Math.max(most, value), -Infinity)),
  held: new Uint8Array(floor.length),
});

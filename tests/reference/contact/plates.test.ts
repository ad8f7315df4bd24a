import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { conjugateGradients } from '../../../src/core/contact/conjugate';
import { multigridCycle } from '../../../src/core/contact/cycle';
import { surfaceOf } from '../../../src/core/contact/evaluate';
import { platesOn } from '../../../src/core/contact/plates';
import { type SplineGrid, splineGrid } from '../../../src/core/contact/splineGrid';
import { areasOf, plateStencil, SIZE, times } from '../../../src/core/contact/stencil';
import { bendingStiffness, isotropic } from '../../../src/core/contact/stiffness';
import tables from '../data/plates_timoshenko.json';

/*
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, Tables 8, 23 and 35, ν = 0.3:
 * deflection α q a⁴ / D at the middle under even load, α P a² / D under a point load there, a the short side. Most
 * printed entries are from memory and are off by up to 0.5 %, so the solver is held to the recomputed series tightly
 * and to the print within 1 %.
 */

const SIDE = 100;
const D = 1000;
const STIFFNESS = { u: D, v: D, cross: 0.3 * D, twist: 0.35 * D };

const gridOf = (ratio: number, cells: number): SplineGrid =>
  splineGrid({ u: [0, SIDE], v: [0, SIDE * ratio] }, cells, Math.round((cells * ratio) / 4) * 4);

/** Deflection at the middle from grids of n and 2n cells, the error falling with their square. */
const extrapolated = (deflection: (cells: number) => number, cells: number): number =>
  (4 * deflection(2 * cells) - deflection(cells)) / 3;

const middle = (grid: SplineGrid, x: Float64Array): number =>
  surfaceOf(grid, x)(SIDE / 2, (grid.rows * grid.cellHeight) / 2).value;

/** Forces of a unit load in the middle: the splines' values there. */
function pointLoad(grid: SplineGrid): Float64Array {
  const load = new Float64Array(grid.across * grid.up);
  for (let k = 0; k < load.length; k++) {
    const unit = new Float64Array(load.length);
    unit[k] = 1;
    load[k] = middle(grid, unit);
  }
  return load;
}

/** Edges on which the plate may turn but not move: the two splines either side of an edge are opposite. */
function supported(grid: SplineGrid, load: Float64Array): number {
  const { columns, rows, across, up } = grid;
  const inner = columns * rows;
  const sources: [number, number][] = [];
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const [column, p] = folded(i - 1, columns);
      const [row, q] = folded(j - 1, rows);
      sources.push([column + row * columns, p * q]);
    }
  }
  const matrix = Matrix.zeros(inner, inner);
  const right = Matrix.zeros(inner, 1);
  const stencil = plateStencil(grid, STIFFNESS);
  for (let k = 0; k < sources.length; k++) {
    const [row, p] = sources[k]!;
    right.set(row, 0, right.get(row, 0) + p * load[k]!);
    for (let e = 0; e < SIZE; e++) {
      const neighbour = k + (e % 5) - 2 + (Math.floor(e / 5) - 2) * across;
      const entry = stencil.entries[k * SIZE + e]!;
      if (entry === 0) continue;
      const [column, q] = sources[neighbour]!;
      matrix.set(row, column, matrix.get(row, column) + p * q * entry);
    }
  }
  const answer = solve(matrix, right).getColumn(0);
  return middle(
    grid,
    Float64Array.from(sources, ([row, p]) => p * answer[row]!),
  );
}

const folded = (i: number, cells: number): [number, number] => {
  if (i < 0) return [0, -1];
  return i >= cells ? [cells - 1, -1] : [i, 1];
};

/** Edges built in: the two splines either side of an edge are nought. By the solver that presses sheets. */
function clamped(grid: SplineGrid, load: Float64Array): number {
  const { across, up } = grid;
  const held = Uint8Array.from({ length: across * up }, (_, k) => {
    const [i, j] = [k % across, Math.floor(k / across)];
    return i < 2 || j < 2 || i >= across - 2 || j >= up - 2 ? 1 : 0;
  });
  const plates = platesOn(grid, STIFFNESS);
  const cycle = multigridCycle(
    plates.map(({ matrix }) => matrix),
    areasOf(grid),
  );
  cycle.load(held, 0);
  const x = new Float64Array(across * up);
  const b = load.map((force, k) => (held[k] ? 0 : force));
  const total = b.reduce((sum, force) => sum + force, 0);
  const left = conjugateGradients(cycle, b, x, { enough: 1e-10 * total });
  expect(left / total).toBeLessThan(1e-9);
  return middle(grid, x);
}

const expectNear = (alpha: number, recomputed: number, printed: number, tight = 4e-4): void => {
  expect(Math.abs(alpha / recomputed - 1)).toBeLessThan(tight);
  expect(Math.abs(alpha / printed - 1)).toBeLessThan(0.01);
};

describe('plates of the tables', () => {
  it.each(['1.0', '1.5', '2.0'] as const)('simply supported, even load, sides 1 : %s', (ratio) => {
    const { alpha, recomputed } = tables.table8_SSSS_uniform[ratio];
    const w = extrapolated((cells) => {
      const grid = gridOf(Number(ratio), cells);
      return supported(grid, areasOf(grid));
    }, 8);
    expectNear((w * D) / SIDE ** 4, recomputed[0]!, alpha);
  });

  it('simply supported, load in the middle, square', () => {
    const { alpha, recomputed } = tables.table23_SSSS_point['1.0'];
    const w = extrapolated((cells) => {
      const grid = gridOf(1, cells);
      return supported(grid, pointLoad(grid));
    }, 16);
    expectNear((w * D) / SIDE ** 2, recomputed, alpha, 1e-3);
  });

  it.each(['1.0', '1.5', '2.0'] as const)('built in, even load, sides 1 : %s', (ratio) => {
    const { alpha, recomputed } = tables.table35_CCCC_uniform[ratio];
    const w = extrapolated((cells) => {
      const grid = gridOf(Number(ratio), cells);
      return clamped(grid, areasOf(grid));
    }, 32);
    expectNear((w * D) / SIDE ** 4, recomputed, alpha);
  });

  it('built in, load in the middle, square', () => {
    const { alpha_table_from_memory, recomputed } = tables.CCCC_point_square;
    const w = extrapolated((cells) => clamped(gridOf(1, cells), pointLoad(gridOf(1, cells))), 32);
    expectNear((w * D) / SIDE ** 2, recomputed, alpha_table_from_memory);
  });

  it('a plate twisted by four corner forces: M = D(1 − ν) wᵤᵥ, P = 2M (the same book, section 11, from memory)', () => {
    const stiffness = bendingStiffness(isotropic(3000, 0.3, 6));
    const grid = splineGrid({ u: [-400, 400], v: [-300, 300] }, 16, 12);
    const k = 2e-5;
    const x = new Float64Array(grid.across * grid.up);
    for (let j = 0; j < grid.up; j++) {
      for (let i = 0; i < grid.across; i++) {
        x[i + j * grid.across] = k * (-400 + (i - 0.5) * 50) * (-300 + (j - 0.5) * 50);
      }
    }
    const forces = times(plateStencil(grid, stiffness), x, new Float64Array(x.length));
    const corner = forces.reduce((sum, force, n) => {
      const [i, j] = [n % grid.across, Math.floor(n / grid.across)];
      return i < grid.across / 2 && j < grid.up / 2 ? sum + force : sum;
    }, 0);
    expect(corner / (2 * stiffness.u * 0.7 * k)).toBeCloseTo(1, 9);
  });
});

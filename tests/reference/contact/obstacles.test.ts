import { solveQP } from 'quadprog';
import { describe, expect, it } from 'vitest';
import { bendingStiffness, isotropic, pressSheet, surfaceOf } from '../../../src/core/contact';
import { coefficientsOf, splineGrid } from '../../../src/core/contact/splineGrid';
import { areasOf, plateStencil, times } from '../../../src/core/contact/stencil';

const REGION = { u: [-750, 750], v: [-700, 980] } as const;

/**
 * Least energy of the same discrete problem by the registry's general-purpose solver `quadprog` (Goldfarb and Idnani's
 * dual method), which needs a matrix that is positive definite: a billionth of its diagonal is added.
 */
function energyByQuadraticProgramme(
  height: (u: number, v: number) => number,
  stiffness: ReturnType<typeof bendingStiffness>,
  pressure: number,
  columns: number,
  rows: number,
): number {
  const grid = splineGrid(REGION, columns, rows);
  const size = grid.across * grid.up;
  const stencil = plateStencil(grid, stiffness);
  const load = areasOf(grid).map((area) => area * pressure);
  const floor = coefficientsOf(grid, height);
  const level = Math.max(...floor);
  const column = new Float64Array(size);
  const unit = new Float64Array(size);
  // The solver counts from 1, and from the level of the wall's highest place, so that its numbers stay small.
  const D: number[][] = Array.from({ length: size + 1 }, () => new Array<number>(size + 1).fill(0));
  const A: number[][] = Array.from({ length: size + 1 }, () => new Array<number>(size + 1).fill(0));
  for (let k = 0; k < size; k++) {
    unit.fill(0);
    unit[k] = 1;
    times(stencil, unit, column);
    for (let i = 0; i < size; i++) D[i + 1]![k + 1] = column[i]!;
    D[k + 1]![k + 1] = column[k]! * (1 + 1e-9);
    A[k + 1]![k + 1] = 1;
  }
  const d = [0, ...load.map((force) => -force)];
  const b = [0, ...floor.map((value) => value - level)];
  const answer = solveQP(D, d, A, b);
  expect(answer.message).toBe('');
  const x = Float64Array.from(answer.solution.slice(1), (value) => value + level);
  times(stencil, x, column);
  return x.reduce((sum, value, k) => sum + value * (column[k]! / 2 + load[k]!), 0);
}

const WALLS = {
  hollow: (u: number) => 6 * (u / 750) ** 2,
  hump: (u: number, v: number) => -8 * (u / 750) ** 2 - 3 * ((v - 140) / 900) ** 2,
  saddle: (u: number, v: number) => 6 * (u / 750) ** 2 - 4 * (v / 800) ** 2 + (3 * u * v) / 6e5,
  uneven: (u: number, v: number) => 3 * Math.sin(u / 200) * Math.cos(v / 260) + 0.004 * u,
};

describe('least energy over a wall, against a general-purpose quadratic programme', () => {
  it.each(Object.entries(WALLS))('%s: within 0.1 %%', (_, height) => {
    for (const [thickness, pressure] of [
      [3, 1e-4],
      [6, 1e-4],
      [12, 1e-5],
    ] as const) {
      const stiffness = bendingStiffness(isotropic(3000, 0.35, thickness));
      const reference = energyByQuadraticProgramme(height, stiffness, pressure, 12, 12);
      const pressed = pressSheet(height, REGION, stiffness, pressure, { columns: 12, rows: 12, tolerance: 1e-6 });
      expect(pressed.converged).toBe(true);
      expect(Math.abs(pressed.energy / reference - 1)).toBeLessThan(1e-3);
    }
  });
});

describe('a strip over a ridge, in closed form', () => {
  /*
   * A beam pressed evenly (q per length) over a point at height δ on a flat floor leaves the floor at
   * a = (72 EI δ / q)^¼ from it, with w = δ − qa²x²/12EI + qax³/9EI − qx⁴/24EI between: from w = w′ = w″ = 0 at a and
   * w′ = 0 at the ridge. Derived here from the beam equation EI w⁗ = −q.
   */
  it('leaves the floor where the beam equation says', () => {
    const [E, t, pressure, ridge] = [3000, 6, 2e-4, 4];
    const stiffness = bendingStiffness(isotropic(E, 0, t));
    const perWidth = stiffness.u;
    const columns = 256;
    const region = { u: [-900, 900], v: [0, 100] } as const;
    const width = 1800 / columns;
    // A ridge one cell wide along v, so that a spline's coefficient can carry it.
    const height = (u: number): number => (Math.abs(u) < width ? ridge : 0);
    const { grid, coefficients, converged } = pressSheet(height, region, stiffness, pressure, {
      columns,
      rows: 8,
      tolerance: 1e-6,
    });
    expect(converged).toBe(true);
    const surface = surfaceOf(grid, coefficients);
    const top = surface(0, 50).value;
    const a = ((72 * perWidth * top) / pressure) ** 0.25;
    const shape = (x: number): number => top * (1 - 6 * (x / a) ** 2 + 8 * (x / a) ** 3 - 3 * (x / a) ** 4);
    for (const x of [0.25 * a, 0.5 * a, 0.75 * a]) {
      expect(Math.abs(surface(x, 50).value - shape(x)) / top).toBeLessThan(0.01);
    }
    expect(surface(1.05 * a, 50).value).toBeLessThan(0.01 * top);
  });
});

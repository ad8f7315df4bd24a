import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bendingStiffness,
  heightOf,
  isotropic,
  pressSheet,
  restingPlane,
  surfaceOf,
} from '../../../../src/core/contact';
import { areasOf } from '../../../../src/core/contact/stencil';

const REGION = { u: [-750, 750], v: [-700, 980] } as const;
const OPTIONS = { columns: 24, rows: 24, tolerance: 1e-6 };
const PVC = bendingStiffness(isotropic(3000, 0.35, 6));
const STIFF = bendingStiffness(isotropic(70_000, 0.3, 20));
const SADDLE = (u: number, v: number): number => 6 * (u / 750) ** 2 - 4 * (v / 800) ** 2 + (3 * u * v) / 6e5;

const wall = fc
  .record({
    a: fc.double({ min: -8, max: 8, noNaN: true }),
    b: fc.double({ min: -8, max: 8, noNaN: true }),
    c: fc.double({ min: -6, max: 6, noNaN: true }),
    d: fc.double({ min: -3, max: 3, noNaN: true }),
  })
  .map(
    ({ a, b, c, d }) =>
      (u: number, v: number): number =>
        a * (u / 750) ** 2 + b * (v / 850) ** 2 + (c * u * v) / 6e5 + d * Math.sin(u / 210) * Math.cos(v / 270),
  );

describe('a sheet pressed against a wall', () => {
  it('stays off the wall, touches only where it is held up, and balances the load', () => {
    fc.assert(
      fc.property(wall, fc.constantFrom(1e-5, 1e-4, 1e-3), fc.constantFrom(3, 6, 12), (height, pressure, thickness) => {
        const stiffness = bendingStiffness(isotropic(3000, 0.35, thickness));
        const pressed = pressSheet(height, REGION, stiffness, pressure, OPTIONS);
        expect(pressed.converged).toBe(true);
        const surface = surfaceOf(pressed.grid, pressed.coefficients);
        for (let u = -740; u < 750; u += 74) {
          for (let v = -690; v < 980; v += 83) expect(surface(u, v).value).toBeGreaterThan(height(u, v) - 0.1);
        }
        const load = areasOf(pressed.grid).reduce((sum, area) => sum + area * pressure, 0);
        const reaction = pressed.reaction.reduce((sum, force) => sum + force, 0);
        expect(reaction / load).toBeCloseTo(1, 4);
      }),
      { numRuns: 25 },
    );
  });

  it('follows the wall where it is soft', () => {
    const soft = bendingStiffness(isotropic(3000, 0.35, 1));
    const pressed = pressSheet(SADDLE, REGION, soft, 1e-2, OPTIONS);
    const surface = surfaceOf(pressed.grid, pressed.coefficients);
    for (const [u, v] of [
      [-700, -600],
      [0, 0],
      [500, 800],
    ] as const) {
      expect(surface(u, v).value).toBeCloseTo(SADDLE(u, v), 3);
    }
  });

  it('rests on three points exactly where it is rigid, and nearly so just before', () => {
    const samples = Array.from({ length: 49 * 49 }, (_, k) => {
      const [u, v] = [-750 + 31.25 * (k % 49), -700 + 35 * Math.floor(k / 49)];
      return [u, v, SADDLE(u, v)] as const;
    });
    const corner = (u: number, v: number) => [u, v, SADDLE(u, v)] as const;
    const plane = restingPlane(
      samples,
      [corner(-750, -700), corner(750, -700), corner(750, 980), corner(-750, 980)],
      [0.1, 140.1],
    );
    for (const [pressure, digits, rigid] of [
      [1e-7, 9, true],
      [1e-4, 0, false],
    ] as const) {
      const pressed = pressSheet(SADDLE, REGION, STIFF, pressure, { ...OPTIONS, columns: 48, rows: 48 });
      expect(pressed.rigid).toBe(rigid);
      expect(surfaceOf(pressed.grid, pressed.coefficients)(0, 140).value).toBeCloseTo(heightOf(plane, 0, 140), digits);
    }
  });

  it('sits on a mirrored wall as in a mirror, and on a leaning one as on an upright one', () => {
    const centre = (height: (u: number, v: number) => number, u: number): number => {
      const { grid, coefficients } = pressSheet(height, REGION, PVC, 1e-4, OPTIONS);
      return surfaceOf(grid, coefficients)(u, 300).value;
    };
    const here = centre(SADDLE, 200);
    expect(centre((u, v) => SADDLE(-u, v), -200)).toBeCloseTo(here, 4);
    expect(centre((u, v) => SADDLE(u, v) + 0.01 * u - 0.02 * v + 5, 200)).toBeCloseTo(here + 2 - 6 + 5, 4);
  });

  it('comes nearer to its energy the finer the grid', () => {
    const energies = [12, 24, 48, 96].map(
      (cells) => pressSheet(SADDLE, REGION, PVC, 1e-4, { columns: cells, rows: cells, tolerance: 1e-7 }).energy,
    );
    const finest = energies[3] as number;
    const errors = energies.slice(0, 3).map((energy) => Math.abs(energy / finest - 1));
    expect(errors[2]).toBeLessThan(2e-3);
    expect(errors[2]).toBeLessThan((errors[0] as number) / 4);
  });
});

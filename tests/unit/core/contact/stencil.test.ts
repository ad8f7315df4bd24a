import { describe, expect, it } from 'vitest';
import { surfaceOf } from '../../../../src/core/contact/evaluate';
import { coarserGrid, coefficientsOf, type SplineGrid, splineGrid } from '../../../../src/core/contact/splineGrid';
import { areasOf, plateStencil, type Stencil, times } from '../../../../src/core/contact/stencil';
import { bendingStiffness, isotropic } from '../../../../src/core/contact/stiffness';
import { coarsenRows, prolong, restrict } from '../../../../src/core/contact/twoGrid';

const REGION = { u: [-700, 740], v: [-300, 980] } as const;
const AREA = 1440 * 1280;
const GRID = splineGrid(REGION, 12, 8);
const STIFFNESS = { u: 7e4, v: 5e4, cross: 1.5e4, twist: 2e4 };

const energy = (grid: SplineGrid, height: (u: number, v: number) => number): number => {
  const x = coefficientsOf(grid, height);
  const forces = times(plateStencil(grid, STIFFNESS), x, new Float64Array(x.length));
  return forces.reduce((sum, force, k) => sum + (force * x[k]!) / 2, 0);
};

describe('splines on a grid', () => {
  it('take the values and curvatures of any quadratic exactly, beyond the edge too', () => {
    const height = (u: number, v: number): number =>
      3 + 0.01 * u - 0.02 * v + 4e-6 * u * u - 3e-6 * u * v + 2e-6 * v * v;
    const surface = surfaceOf(GRID, coefficientsOf(GRID, height));
    for (const [u, v] of [
      [-700, -300],
      [0, 0],
      [333, 777],
      [740, 980],
      [760, 1000],
    ] as const) {
      const point = surface(u, v);
      expect(point.value).toBeCloseTo(height(u, v), 9);
      expect(point.uu).toBeCloseTo(8e-6, 12);
      expect(point.uv).toBeCloseTo(-3e-6, 12);
      expect(point.vv).toBeCloseTo(4e-6, 12);
    }
  });

  it('share the rectangle among them', () => {
    expect(areasOf(GRID).reduce((sum, area) => sum + area, 0)).toBeCloseTo(AREA, 6);
  });
});

describe('bending energy of a free plate', () => {
  it('is none for a plane', () => {
    const x = coefficientsOf(GRID, (u, v) => 5 - 0.3 * u + 0.2 * v);
    const forces = times(plateStencil(GRID, STIFFNESS), x, new Float64Array(x.length));
    expect(Math.max(...forces.map(Math.abs))).toBeLessThan(1e-8);
  });

  it('is half the stiffness by the curvature squared by the area, for each way to bend', () => {
    const k = 3e-6;
    expect(energy(GRID, (u) => (k * u * u) / 2) / ((STIFFNESS.u * k * k * AREA) / 2)).toBeCloseTo(1, 9);
    expect(energy(GRID, (_, v) => (k * v * v) / 2) / ((STIFFNESS.v * k * k * AREA) / 2)).toBeCloseTo(1, 9);
    expect(energy(GRID, (u, v) => k * u * v) / (2 * STIFFNESS.twist * k * k * AREA)).toBeCloseTo(1, 9);
    const bowl = ((STIFFNESS.u + STIFFNESS.v + 2 * STIFFNESS.cross) * k * k * AREA) / 2;
    expect(energy(GRID, (u, v) => (k * (u * u + v * v)) / 2) / bowl).toBeCloseTo(1, 9);
  });

  it('of an isotropic sheet is D(1 − ν) in twist', () => {
    const { u, v, cross, twist } = bendingStiffness(isotropic(3000, 0.3, 6));
    expect(u).toBeCloseTo((3000 * 216) / (12 * 0.91), 6);
    expect(v).toBe(u);
    expect(cross / u).toBeCloseTo(0.3, 12);
    expect(twist / u).toBeCloseTo((1 - 0.3) / 2, 12);
  });
});

describe('between two grids', () => {
  const coarse = coarserGrid(GRID)!;
  const wavy = Float64Array.from({ length: coarse.across * coarse.up }, (_, k) => Math.sin(k * 1.7) * 3);
  const refined = new Float64Array(GRID.across * GRID.up);
  prolong(wavy, refined, GRID.across, GRID.up);

  it('a coarse surface is the same surface on the fine grid', () => {
    const [low, high] = [surfaceOf(coarse, wavy), surfaceOf(GRID, refined)];
    for (const [u, v] of [
      [-690, -290],
      [12, 345],
      [700, 960],
    ] as const) {
      expect(high(u, v).value).toBeCloseTo(low(u, v).value, 9);
      expect(high(u, v).uv).toBeCloseTo(low(u, v).uv, 12);
    }
  });

  it('restriction is the transpose of prolongation', () => {
    const forces = Float64Array.from({ length: refined.length }, (_, k) => Math.cos(k * 0.9));
    const down = new Float64Array(wavy.length);
    restrict(forces, down, GRID.across, GRID.up);
    const fine = forces.reduce((sum, force, k) => sum + force * refined[k]!, 0);
    expect(down.reduce((sum, force, k) => sum + force * wavy[k]!, 0)).toBeCloseTo(fine, 9);
  });

  it('the matrix made coarse is the coarse matrix', () => {
    const direct = plateStencil(coarse, STIFFNESS);
    const made: Stencil = { ...direct, entries: new Float64Array(direct.entries.length) };
    coarsenRows(plateStencil(GRID, STIFFNESS), new Uint8Array(coarse.across * coarse.up).fill(1), made);
    const largest = Math.max(...direct.entries.map(Math.abs));
    direct.entries.forEach((entry, k) => expect(Math.abs(made.entries[k]! - entry) / largest).toBeLessThan(1e-12));
  });

  it('has no coarser grid where cells do not pair', () => {
    expect(coarserGrid(splineGrid(REGION, 7, 8))).toBeNull();
  });
});

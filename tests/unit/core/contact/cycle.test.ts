import { describe, expect, it } from 'vitest';
import { bendingStiffness, isotropic } from '../../../../src/core/contact';
import { conjugateGradients } from '../../../../src/core/contact/conjugate';
import { type Cycle, multigridCycle } from '../../../../src/core/contact/cycle';
import { platesOn } from '../../../../src/core/contact/plates';
import { centreOf, type SplineGrid, splineGrid } from '../../../../src/core/contact/splineGrid';
import { tiedTimes } from '../../../../src/core/contact/truncated';

const REGION = { u: [-750, 750], v: [-700, 980] } as const;
const STIFFNESS = bendingStiffness(isotropic(3000, 0.35, 6));

/** Ways a sheet may be held: at two edges, in a disc, in three places. */
const HOLDS: Record<string, (grid: SplineGrid, u: number, v: number) => boolean> = {
  'at two edges': (_, u) => Math.abs(u) > 750,
  'in a disc': (_, u, v) => Math.hypot(u - 60, v + 40) < 300,
  'in three places': ({ cellWidth, cellHeight }, u, v) =>
    [
      [-700, -650],
      [710, -600],
      [30, 900],
    ].some(([a, b]) => Math.abs(u - a!) <= cellWidth / 2 && Math.abs(v - b!) <= cellHeight / 2),
};

function heldBy(grid: SplineGrid, hold: (typeof HOLDS)[string]): Uint8Array {
  return Uint8Array.from({ length: grid.across * grid.up }, (_, k) =>
    hold(grid, ...centreOf(grid, k % grid.across, Math.floor(k / grid.across))) ? 1 : 0,
  );
}

function cycleOn(cells: number): { cycle: Cycle; grid: SplineGrid; areas: Float64Array } {
  const plates = platesOn(splineGrid(REGION, cells, cells), STIFFNESS);
  const { grid, areas } = plates[0]!;
  return {
    cycle: multigridCycle(
      plates.map(({ matrix }) => matrix),
      areas,
    ),
    grid,
    areas,
  };
}

const randomlyHeld = (size: number, share: number, seed: number): Uint8Array =>
  Uint8Array.from({ length: size }, (_, k) => (Math.abs(Math.sin((k + 1) * seed) * 1e4) % 1 < share ? 1 : 0));

describe('multigrid on the free splines', () => {
  it.each(Object.entries(HOLDS))('takes hardly more cycles on finer grids: held %s', (_, hold) => {
    const cycles = [24, 48, 96].map((cells) => {
      const { cycle, grid, areas } = cycleOn(cells);
      const held = heldBy(grid, hold);
      cycle.load(held, 1e-10);
      let count = 0;
      const counted: Cycle = {
        ...cycle,
        run(force, out) {
          count++;
          cycle.run(force, out);
        },
      };
      const b = areas.map((area, k) => (held[k] ? 0 : area));
      const total = b.reduce((sum, force) => sum + force, 0);
      const x = new Float64Array(b.length);
      expect(conjugateGradients(counted, b, x, { enough: 1e-6 * total })).toBeLessThan(1e-6 * total);
      return count;
    });
    expect(cycles[2]).toBeLessThanOrEqual(18);
    expect(cycles[2]! - cycles[1]!).toBeLessThanOrEqual(3);
  });

  it('is symmetric, as conjugate gradients need', () => {
    const { cycle, areas } = cycleOn(24);
    const held = randomlyHeld(areas.length, 0.2, 7.3);
    cycle.load(held, 1e-9);
    const force = (seed: number): Float64Array => areas.map((_, k) => (held[k] ? 0 : Math.sin(k * seed)));
    const [a, b] = [force(1.3), force(2.9)];
    const [fromA, fromB] = [new Float64Array(a.length), new Float64Array(a.length)];
    cycle.run(a, fromA);
    cycle.run(b, fromB);
    const dot = (x: Float64Array, y: Float64Array): number => x.reduce((sum, value, k) => sum + value * y[k]!, 0);
    expect(dot(a, fromB) / dot(b, fromA)).toBeCloseTo(1, 8);
  });

  it('works alike whether loaded anew or from other held splines', () => {
    const [fresh, used] = [cycleOn(24), cycleOn(24)];
    const size = fresh.areas.length;
    const held = randomlyHeld(size, 0.1, 3.7);
    used.cycle.load(randomlyHeld(size, 0.3, 5.1), 1e-7);
    used.cycle.load(
      held.map((value, k) => (k % 97 === 5 ? 1 - value : value)),
      1e-9,
    );
    for (const { cycle } of [fresh, used]) cycle.load(held, 1e-9);
    const b = fresh.areas.map((area, k) => (held[k] ? 0 : area * Math.cos(k)));
    const outcomes = [fresh, used].map(({ cycle }) => {
      const [x, product] = [new Float64Array(size), new Float64Array(size)];
      cycle.run(b, x);
      tiedTimes(cycle.matrix, x, product);
      return [...x, ...product];
    });
    expect(outcomes[1]).toEqual(outcomes[0]);
  });
});

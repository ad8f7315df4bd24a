import { describe, expect, it } from 'vitest';
import { developMap, type Region } from '../../src/core/flatten';
import { gaussRule } from '../../src/core/flatten/gaussOver';
import { heightField, quadric } from '../unit/core/heightField';

const square = (a: number): Region => ({ u: [-a / 2, a / 2], v: [-a / 2, a / 2] });
const distance = ([a, b]: readonly [number, number], [c, d]: readonly [number, number]): number =>
  Math.hypot(a - c, b - d);

/**
 * A cone over a wall unrolls about its apex: with slope k a place at level distance r and angle θ from the apex comes to
 * lie at distance r √(1 + k²) and angle θ / √(1 + k²) (do Carmo, Differential Geometry of Curves and Surfaces, 4-2, example 3).
 */
describe('cone', () => {
  const [k, apex] = [0.06, [-2600, -900] as const];
  const from = (u: number, v: number) => [u - apex[0], v - apex[1]] as const;
  const cone = heightField(
    (u, v) => k * Math.hypot(...from(u, v)),
    (u, v) => {
      const [a, b] = from(u, v);
      const r = Math.hypot(a, b);
      return [(k * a) / r, (k * b) / r];
    },
  );
  const region: Region = { u: [-750, 750], v: [-700, 950] };
  const flat = developMap(cone, region);
  const unrolled = (u: number, v: number): [number, number] => {
    const [a, b] = from(u, v);
    const [r, angle] = [Math.hypot(a, b) * Math.hypot(1, k), Math.atan2(b, a) / Math.hypot(1, k)];
    return [r * Math.cos(angle), r * Math.sin(angle)];
  };
  const outline: [number, number][] = [
    [-750, -700],
    [0, -700],
    [750, -700],
    [750, 100],
    [750, 950],
    [0, 950],
    [-750, 950],
    [-750, 100],
  ];
  const fine = developMap(cone, region, 9);
  const misses = (map: typeof flat): number =>
    Math.max(
      ...outline.flatMap((p) =>
        outline.map((q) =>
          Math.abs(distance(map.toSheet(...p), map.toSheet(...q)) - distance(unrolled(...p), unrolled(...q))),
        ),
      ),
    );
  it('is developed without strain, but for what a polynomial of degree 5 cannot follow: 0.01 mm over its height', () => {
    expect(flat.strain).toBeLessThan(7e-6);
    expect(fine.strain).toBeLessThan(5e-8);
  });
  it('has the outline of the unrolled cone, every distance between two of its points', () => {
    expect(misses(flat)).toBeLessThan(0.02);
    expect(misses(fine)).toBeLessThan(1e-5);
    // what unrolling changes at all, so that the figures above say something
    const [p, q] = [outline[0]!, outline[4]!];
    expect(Math.abs(distance(unrolled(...p), unrolled(...q)) - distance(p, q))).toBeGreaterThan(1);
  });
});

/** A bow up the wall, h = c v²/2: lengths up it are those of the parabola (checked at its outline in the unit tests). */
it('cylinder: no strain', () => {
  expect(developMap(quadric({ C: 1e-4 }), square(1500)).strain).toBeLessThan(4e-6);
  expect(developMap(quadric({ A: 3e-5, B: 3e-5, C: 3e-5 }), square(1500)).strain).toBeLessThan(4e-6);
});

/*
 * Saddles have Gauss curvature K = −B² (h = B u v) or −A² (h = A (u² − v²)/2). Least Σε² is plane elasticity without
 * cross contraction: ε = ∂∂φ with Δ²φ = −K, φ and its slope 0 along the edges, a clamped plate under uniform load q = −K of
 * stiffness 1. Where a plate has the bending moment M across its edge, the sheet has the strain M along it.
 */
describe('saddle', () => {
  const saddles = [
    ['h = B u v', (bend: number) => quadric({ B: bend })],
    ['h = A (u² − v²)/2', (bend: number) => quadric({ A: bend, C: -bend })],
  ] as const;

  /** Built-in beam under uniform load: qL²/12 at its ends, qL²/24 in the middle (reference list E: clamped beam). */
  it.each(saddles)('%s on a long strip: K a²/12 along its edges, K a²/24 along its middle', (_, wall) => {
    const [bend, a] = [3e-5, 300];
    const strip: Region = { u: [-a / 2, a / 2], v: [-1500, 1500] };
    const { strainAt } = developMap(wall(bend), strip, 8);
    const unit = bend ** 2 * a ** 2;
    for (const [place, share] of [
      [[a / 2, 0], 1 / 12],
      [[-a / 2, 300], 1 / 12],
      [[0, 0], 1 / 24],
    ] as const) {
      const found = strainAt(place[0], place[1]) / unit / share;
      expect(found).toBeGreaterThan(0.98);
      expect(found).toBeLessThan(1.02);
    }
  });

  /**
   * Clamped square plate under uniform load: M = 0.0513 q a² in the middle of an edge, 0.0231 q a² in its middle with ν = 0.3,
   * there w_xx = 0.0231/1.3 (Timoshenko and Woinowsky-Krieger, table 35; 0.0231 read second hand, 0.0513 from memory).
   */
  it.each(saddles)('%s on a square: 0.0513 K a² in the middle of its edges, 0.0178 in its middle', (_, wall) => {
    const [bend, a] = [2e-5, 1400];
    const unit = bend ** 2 * a ** 2;
    const fine = developMap(wall(bend), square(a), 10);
    expect(fine.strain / unit / 0.0513).toBeGreaterThan(0.99);
    expect(fine.strain / unit / 0.0513).toBeLessThan(1.01);
    expect(fine.strainAt(0, 0) / unit / (0.0231 / 1.3)).toBeCloseTo(1, 1);
    const usual = developMap(wall(bend), square(a));
    expect(usual.strain / unit / 0.0513).toBeGreaterThan(0.9);
    expect(usual.strain / unit / 0.0513).toBeLessThan(1);
  });

  it('is left with more by nothing but the square of its bend and of its size', () => {
    const strain = (bend: number, a: number) => developMap(quadric({ B: bend }), square(a)).strain;
    expect(strain(4e-5, 1400) / strain(2e-5, 1400)).toBeCloseTo(4, 2);
    expect(strain(2e-5, 700) / strain(2e-5, 1400)).toBeCloseTo(0.25, 3);
  });

  it('a dome, K = +B², is left with as much as a saddle', () => {
    const [dome, saddle] = [quadric({ A: 2e-5, C: 2e-5 }), quadric({ A: 2e-5, C: -2e-5 })];
    expect(developMap(dome, square(1400)).strain / developMap(saddle, square(1400)).strain).toBeCloseTo(1, 2);
  });
});

/** Abramowitz and Stegun, table 25.4 (from memory). */
it('Gauss–Legendre rule of three points', () => {
  const rule = gaussRule(3).sort((a, b) => a.node - b.node);
  expect(rule.map(({ node }) => node)).toEqual([-Math.sqrt(0.6), 0, Math.sqrt(0.6)].map((x) => expect.closeTo(x, 14)));
  expect(rule.map(({ weight }) => weight)).toEqual([5 / 9, 8 / 9, 5 / 9].map((x) => expect.closeTo(x, 14)));
});

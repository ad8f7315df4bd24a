import { describe, expect, it } from 'vitest';
import { bendingStiffness, heldAt, isotropic, splineGrid } from '../../../../src/core/contact';
import { randomFrom } from '../../../simulate';

const REGION = { u: [-600, 600], v: [-300, 300] } as const;
const between = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1));
const latticeOf = (us: number[], vs: number[]) => us.flatMap((u) => vs.map((v) => ({ u, v })));

/**
 * Reactions of a beam of stiffness 1 on supports a step apart that lie on a parabola of curvature 1, its ends free: the
 * three-moment equation m₋ + 4m + m₊ = 6 with no moment at both ends (Clapeyron 1857), solved by relaxation.
 */
function parabolaReactions(supports: number, step: number): number[] {
  const moments = new Array<number>(supports).fill(0);
  for (let round = 0; round < 200; round++) {
    for (let k = 1; k < supports - 1; k++) moments[k] = (6 - moments[k - 1]! - moments[k + 1]!) / 4;
  }
  const shear = moments.slice(1).map((moment, k) => (moment - moments[k]!) / step);
  return moments.map((_, k) => (shear[k] ?? 0) - (shear[k - 1] ?? 0));
}

describe('a free plate held at points', () => {
  it('pulls at rows of points as a beam on supports does, where it is bent to a cylinder', () => {
    const stiffness = bendingStiffness(isotropic(3000, 0, 6));
    const [us, vs] = [between(-540, 540, 10), between(-300, 300, 21)];
    const points = latticeOf(us, vs);
    const curvature = 20e-6;
    const forces = heldAt(
      splineGrid(REGION, 48, 24),
      stiffness,
      points,
    )(points.map(({ u }) => (curvature * u * u) / 2));
    const columns = us.map((_, k) => forces.slice(21 * k, 21 * (k + 1)).reduce((sum, each) => sum + each, 0));
    const expected = parabolaReactions(10, 120).map((each) => each * stiffness.u * curvature * 600);
    expect(expected[0]).toBeGreaterThan(0);
    columns.forEach((column, k) => {
      expect(Math.abs(column - expected[k]!), `column ${k}`).toBeLessThan(0.02 * expected[0]!);
    });
  });

  it('pulls at its corners with 2D(1 − ν)k where it is twisted to k·u·v', () => {
    // Timoshenko and Woinowsky-Krieger, art. 11 and 22: pure twist, forces at the corners of 2 M_xy.
    const stiffness = bendingStiffness(isotropic(4000, 0.3, 5));
    const points = latticeOf([-600, 600], [-300, 300]);
    const twist = 4e-5;
    const forces = heldAt(splineGrid(REGION, 24, 24), stiffness, points)(points.map(({ u, v }) => twist * u * v));
    const expected = 2 * stiffness.u * (1 - 0.3) * twist;
    points.forEach(({ u, v }, k) => {
      expect(forces[k]! / expected).toBeCloseTo(Math.sign(u * v), 3);
    });
  });

  it('has forces and moments in balance, and none where the points lie in a plane', () => {
    const random = randomFrom(5);
    const points = latticeOf(between(-560, 560, 12), between(-260, 260, 6));
    const hold = heldAt(splineGrid(REGION, 24, 24), bendingStiffness(isotropic(3000, 0.35, 6)), points);
    const forces = hold(points.map(() => random.normal(0, 1)));
    const size = Math.max(...forces.map(Math.abs));
    const sum = (arm: (k: number) => number): number => forces.reduce((all, force, k) => all + force * arm(k), 0);
    expect(Math.abs(sum(() => 1)) / size).toBeLessThan(1e-4);
    expect(Math.abs(sum((k) => points[k]!.u / 600)) / size).toBeLessThan(1e-4);
    expect(Math.abs(sum((k) => points[k]!.v / 300)) / size).toBeLessThan(1e-4);
    const flat = hold(points.map(({ u, v }) => 30 + 0.02 * u - 0.01 * v));
    expect(Math.max(...flat.map(Math.abs)) / size).toBeLessThan(1e-4);
  });

  it('holds nothing where points in a line leave the plate free to turn', () => {
    const points = between(-500, 500, 2).map((u) => ({ u, v: 0 }));
    const forces = heldAt(splineGrid(REGION, 24, 24), bendingStiffness(isotropic(3000, 0.3, 6)), points)([0, 4]);
    expect(Math.max(...forces.map(Math.abs))).toBeLessThan(0.01);
  });
});

import { describe, expect, it } from 'vitest';
import { developMap, planeMap, type Region } from '../../../../src/core/flatten';
import { heightField, quadric } from '../heightField';

const REGION: Region = { u: [-760, 740], v: [-737, 980] };
const PLACES = [
  [-760, -737],
  [740, -737],
  [740, 980],
  [-760, 980],
  [0, 0],
  [300, -500],
  [-400, 650],
] as const;

/** Length of the parabola h = k s² / 2 from 0 to s. */
const parabolaLength = (k: number, s: number): number => {
  const m = k * s;
  return k === 0 ? s : (m * Math.hypot(1, m) + Math.asinh(m)) / (2 * k);
};

const expectPoint = (found: [number, number], [x, y]: [number, number], digits: number): void => {
  expect(found[0]).toBeCloseTo(x, digits);
  expect(found[1]).toBeCloseTo(y, digits);
};

describe('developMap', () => {
  it('is the plane itself on a plane', () => {
    const wall = quadric({ p: 0.05, q: -0.08 });
    const [flat, plane] = [developMap(wall, REGION), planeMap(wall, REGION)];
    for (const [u, v] of PLACES) expectPoint(flat.toSheet(u, v), plane.toSheet(u, v), 7);
    expect(flat.strain).toBeLessThan(1e-10);
  });

  it('lays a bow up the wall out at its arc length', () => {
    const C = 1e-4; // 25 mm over 1.4 m
    const flat = developMap(quadric({ C }), REGION);
    for (const [u, v] of PLACES) expectPoint(flat.toSheet(u, v), [u, parabolaLength(C, v)], 3);
    expect(parabolaLength(C, 980) - 980).toBeGreaterThan(1.5); // so that the digits above say something
    expect(flat.strain).toBeLessThan(2e-6);
  });

  it('lays out a cylinder whose axis runs at an angle', () => {
    const [k, angle] = [8e-5, 0.6];
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const flat = developMap(quadric({ A: k * c * c, B: k * c * s, C: k * s * s }), REGION);
    for (const [u, v] of PLACES) {
      const across = parabolaLength(k, u * c + v * s);
      const along = v * c - u * s;
      expectPoint(flat.toSheet(u, v), [across * c - along * s, across * s + along * c], 3);
    }
    expect(flat.strain).toBeLessThan(4e-6);
  });

  it('follows a cylinder that also leans', () => {
    // bow across the wall on a wall that leans: lengths along u are parabola lengths, rulings lean by q
    const [A, q] = [6e-5, 0.03];
    const flat = developMap(quadric({ A, q }), REGION);
    const edge = Array.from({ length: 2001 }, (_, i) => flat.toSheet(-700 + 0.7 * i, 400));
    const length = edge.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - edge[i]![0], y - edge[i]![1]), 0);
    expect(length).toBeCloseTo(2 * parabolaLength(A, 700), 4);
    const [low, high] = [flat.toSheet(500, -700), flat.toSheet(500, 900)];
    expect(Math.hypot(high[0] - low[0], high[1] - low[1])).toBeCloseTo(1600 * Math.hypot(1, q), 4);
    expect(flat.strain).toBeLessThan(2e-6);
  });

  it('keeps lengths on a saddle as well as its strain says', () => {
    const B = 3e-5;
    const flat = developMap(quadric({ B }), REGION);
    for (const [[u0, v0], [u1, v1]] of [
      [
        [-760, -737],
        [740, 980],
      ],
      [
        [-760, 980],
        [740, -737],
      ],
      [
        [-700, 0],
        [700, 100],
      ],
    ] as const) {
      const steps = 400;
      const at = (i: number): [number, number] => [u0 + ((u1 - u0) * i) / steps, v0 + ((v1 - v0) * i) / steps];
      let [inSpace, onSheet] = [0, 0];
      for (let i = 1; i <= steps; i++) {
        const [[a, b], [c, d]] = [at(i - 1), at(i)];
        inSpace += Math.hypot(c - a, d - b, B * (c * d - a * b));
        const [[x, y], [z, w]] = [flat.toSheet(a, b), flat.toSheet(c, d)];
        onSheet += Math.hypot(z - x, w - y);
      }
      expect(Math.abs(onSheet / inSpace - 1)).toBeLessThan(flat.strain * 1.05);
    }
  });

  it('keeps the crossing of the control lines and leaves it level', () => {
    const flat = developMap(quadric({ p: 0.02, q: 0.03, A: 5e-5, B: 2e-5, C: -4e-5 }), REGION);
    expectPoint(flat.toSheet(0, 0), [0, 0], 9);
    expect(Math.abs(flat.toSheet(1, 0)[1])).toBeLessThan(1e-4);
  });

  it('keeps the nearest point of a region that does not hold the crossing', () => {
    const above: Region = { u: [40, 700], v: [500, 550] };
    const flat = developMap(quadric({ q: 0.02, C: 3e-5, B: 1e-5 }), above);
    expectPoint(flat.toSheet(40, 500), [40, 500], 9);
    const [low, high] = [flat.toSheet(300, 500), flat.toSheet(300, 550)];
    const rise = 0.02 * 50 + (3e-5 * (550 ** 2 - 500 ** 2)) / 2 + 1e-5 * 300 * 50;
    expect(Math.hypot(high[0] - low[0], high[1] - low[1])).toBeCloseTo(Math.hypot(50, rise), 3);
  });

  it('answers for a wall that no sheet could follow', () => {
    const wild = heightField(
      (a, b) => 40 * a * Math.sin(b),
      (a, b) => [40 * Math.sin(b), 40 * a * Math.cos(b)],
    );
    const flat = developMap(wild, REGION);
    expect(flat.toSheet(300, 400).every(Number.isFinite)).toBe(true);
    expect(flat.strain).toBeGreaterThan(1);
  });
});

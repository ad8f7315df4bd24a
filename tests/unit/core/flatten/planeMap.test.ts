import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planeMap } from '../../../../src/core/flatten';
import { quadric } from '../heightField';

const REGION = { u: [-760, 740], v: [-737, 980] } as { u: [number, number]; v: [number, number] };
const slope = fc.integer({ min: -300, max: 300 }).map((n) => n / 1000);
const place = fc.integer({ min: -900, max: 900 });

describe('planeMap', () => {
  it('keeps every length and angle of a leaning, turned plane', () => {
    fc.assert(
      fc.property(slope, slope, fc.array(place, { minLength: 6, maxLength: 6 }), (p, q, at) => {
        const { toSheet } = planeMap(quadric({ p, q }), REGION);
        const points = [0, 2, 4].map((k) => [at[k]!, at[k + 1]!] as const);
        for (const [i, j] of [
          [0, 1],
          [1, 2],
          [2, 0],
        ] as const) {
          const [[u, v], [a, b]] = [points[i]!, points[j]!];
          const [x, y] = toSheet(u, v);
          const [c, d] = toSheet(a, b);
          const inSpace = Math.hypot(u - a, v - b, p * (u - a) + q * (v - b));
          expect(Math.hypot(x - c, y - d)).toBeCloseTo(inSpace, 9);
        }
      }),
      { seed: 2, numRuns: 100 },
    );
  });

  it('keeps the crossing of the control lines, its first axis level', () => {
    const { toSheet } = planeMap(quadric({ p: 0.1, q: 0.2 }), REGION);
    expect(toSheet(0, 0)).toEqual([0, 0]);
    expect(toSheet(500, 0)[1]).toBe(0);
    expect(toSheet(0, 500)[1]).toBeGreaterThan(500);
  });

  it('lies along the best plane of a bowed wall and asks for no strain', () => {
    // least squares of q v + ½ C v² over [v0, v1]: slope q + C (v0 + v1) / 2
    const { toSheet, strain } = planeMap(quadric({ q: 0.01, C: 2e-4 }), REGION);
    const mean = 0.01 + (2e-4 * (-737 + 980)) / 2;
    expect(toSheet(0, 1000)[1]).toBeCloseTo(1000 * Math.hypot(1, mean), 9);
    expect(strain).toBe(0);
  });
});

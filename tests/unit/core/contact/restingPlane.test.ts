import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightOf, restingPlane, type Sample } from '../../../../src/core/contact/restingPlane';

const SIZE = 4;
const CENTRE = [1.5013, 1.4971] as const;
const corners = (samples: Sample[]) => [samples[0]!, samples[12]!, samples[15]!, samples[3]!] as const;
const grid = (heights: number[]): Sample[] => heights.map((h, k): Sample => [Math.floor(k / SIZE), k % SIZE, h]);

/** Height at the centre of the lowest plane over all samples: the best of all triples whose triangle holds the centre. */
function restingByTrial(samples: Sample[]): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const a of samples) {
    for (const b of samples) {
      for (const c of samples) {
        const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
        if (area <= 0) continue;
        const share = (p: Sample, q: Sample): number =>
          ((q[0] - p[0]) * (CENTRE[1] - p[1]) - (q[1] - p[1]) * (CENTRE[0] - p[0])) / area;
        const weights = [share(b, c), share(c, a), share(a, b)];
        if (weights.some((weight) => weight < 0)) continue;
        const at = (u: number, v: number): number => {
          const w = (p: Sample, q: Sample): number => ((q[0] - p[0]) * (v - p[1]) - (q[1] - p[1]) * (u - p[0])) / area;
          return w(b, c) * a[2] + w(c, a) * b[2] + w(a, b) * c[2];
        };
        if (samples.every(([u, v, h]) => at(u, v) >= h - 1e-9)) lowest = Math.min(lowest, at(...CENTRE));
      }
    }
  }
  return lowest;
}

describe('restingPlane', () => {
  it('is the one that a search over all triples of samples finds', () => {
    const heights = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: SIZE * SIZE, maxLength: SIZE * SIZE });
    fc.assert(
      fc.property(heights, (each) => {
        const samples = grid(each);
        const plane = restingPlane(samples, corners(samples), CENTRE);
        for (const [u, v, h] of samples) expect(heightOf(plane, u, v)).toBeGreaterThanOrEqual(h - 1e-8);
        expect(heightOf(plane, ...CENTRE)).toBeCloseTo(restingByTrial(samples), 8);
      }),
      { seed: 9, numRuns: 60 },
    );
  });

  it('is the wall itself where that is flat', () => {
    const samples = grid(Array.from({ length: 16 }, (_, k) => 5 + 2 * Math.floor(k / 4) - 3 * (k % 4)));
    const plane = restingPlane(samples, corners(samples), CENTRE);
    expect(plane).toEqual({
      height: expect.closeTo(5, 10),
      slopeU: expect.closeTo(2, 10),
      slopeV: expect.closeTo(-3, 10),
    });
  });
});

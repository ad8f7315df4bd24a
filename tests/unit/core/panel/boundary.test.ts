import { describe, expect, it } from 'vitest';
import { panelEdges, polygonArea } from '../../../../src/core/panel';
import { boundaryOf, outlineOf, regionOf } from '../../../../src/core/panel/boundary';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { jobOf } from './fitting';

const job = jobOf({
  rim: {
    profile: [
      [0, 0],
      [30, -4],
      [60, -30],
    ],
  },
});
const PANELS = ['back', 'left', 'right'] as const;

describe('boundaryOf', () => {
  it('has corners that lie on both edges', () => {
    for (let seed = 1; seed <= 10; seed++) {
      for (const name of PANELS) {
        const edges = panelEdges(alcoveWith(skewedParameters(seed)), job, name);
        const { lower, upper, bottom, top } = boundaryOf(edges);
        for (const [side, level, at] of [
          [lower, bottom, 0],
          [upper, bottom, -1],
          [lower, top, 0],
          [upper, top, -1],
        ] as const) {
          const onLevel = level.samples.at(at)!;
          const onSide = side.samples.at(level === bottom ? 0 : -1)!;
          expect(onSide.at).toBeCloseTo(onLevel.along, 8);
          expect(onSide.along).toBeCloseTo(onLevel.at, 8);
          expect(side.at(onSide.along).value).toBeCloseTo(onSide.at, 8);
          expect(level.at(onLevel.along).value).toBeCloseTo(onLevel.at, 8);
        }
      }
    }
  });
});

describe('outlineOf', () => {
  it('runs counter-clockwise, each corner once', () => {
    const edges = panelEdges(alcoveOf({}), jobOf(), 'back');
    const outline = outlineOf(boundaryOf(edges));
    expect(outline[0]).toEqual([expect.closeTo(-758, 9), expect.closeTo(-737, 9)]);
    expect(polygonArea(outline)).toBeCloseTo(1516 * 1717, 6);
    const keys = outline.map((point) => point.map((each) => each.toFixed(6)).join());
    expect(new Set(keys).size).toBe(outline.length);
    expect(outline).toHaveLength(64);
  });

  it.each(PANELS)('keeps within 0.05 mm of the edges of a strongly bowed alcove: %s', (name) => {
    const alcove = alcoveOf({
      'back.bowAcross': 5e-5,
      'back.bowUp': -6e-5,
      'back.twist': 3e-5,
      'left.bowUp': 9e-5,
      'right.bowUp': -9e-5,
      'left.bowAcross': 4e-5,
      'rim.bowAlong': 5e-5,
      'rim.bowAcross': -6e-5,
      'right.twist': 4e-5,
    });
    const edges = panelEdges(alcove, job, name);
    const outline = outlineOf(boundaryOf(edges));
    const {
      u: [u0, u1],
      v: [v0, v1],
    } = regionOf(outline);
    const segmentDistance = (u: number, v: number): number =>
      Math.min(
        ...outline.map(([a, b], i) => {
          const [c, d] = outline[(i + 1) % outline.length]!;
          const share = Math.min(
            1,
            Math.max(0, ((u - a) * (c - a) + (v - b) * (d - b)) / ((c - a) ** 2 + (d - b) ** 2)),
          );
          return Math.hypot(u - a - share * (c - a), v - b - share * (d - b));
        }),
      );
    let compared = 0;
    for (let k = 1; k < 150; k++) {
      const v = v0 + ((v1 - v0) * k) / 150;
      const u = u0 + ((u1 - u0) * k) / 150;
      const places = [
        [edges.lower.at(v).value, v],
        [edges.upper.at(v).value, v],
        [u, edges.bottom(u).value],
        [u, edges.top(u).value],
      ] as const;
      for (const [a, b] of places) {
        const within =
          a >= edges.lower.at(b).value - 1e-6 &&
          a <= edges.upper.at(b).value + 1e-6 &&
          b >= edges.bottom(a).value - 1e-6;
        if (!within) continue;
        expect(segmentDistance(a, b)).toBeLessThan(0.05);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(500);
  });
});

describe('regionOf', () => {
  it('is the rectangle around', () => {
    expect(
      regionOf([
        [1, 5],
        [-3, 2],
        [4, 9],
      ]),
    ).toEqual({ u: [-3, 4], v: [2, 9] });
  });
});

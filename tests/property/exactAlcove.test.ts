import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solve } from '../../src/core';
import {
  adjustedAlcove,
  fullPlan,
  jobWith,
  outlineDistance,
  plausibleAlcove,
  trueEdge,
  trueOutline,
  withSd,
} from '../simulate';
import { choices, PANELS, runs, seeds } from './arbitraries';

describe('an alcove read without error', () => {
  it('gives outlines within 0.2 mm of the truth at every edge', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const alcove = plausibleAlcove(seed);
        const job = jobWith(withSd(fullPlan(alcove, { seed, top: chosen.fit!.top }), 0.01), chosen);
        const result = solve(job);
        for (const panel of PANELS) {
          expect(outlineDistance(result.panels[panel].outline, trueOutline(alcove, job, panel, 40))).toBeLessThan(0.2);
        }
      }),
      runs(60),
    );
  });

  it('is known without priors from a full plan', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const alcove = plausibleAlcove(seed);
        const priors = { plumb: 200, square: 200, twist: 200, bow: 200, rimLevel: 200, frontPlumb: 200 };
        const result = solve(jobWith(withSd(fullPlan(alcove), 1e-4), { priors }));
        expect(result.adjustment.assumed).toEqual([]);
        const found = adjustedAlcove(result);
        for (const wall of ['back', 'left', 'right', 'rim'] as const) {
          for (const [name, value] of Object.entries(found[wall])) {
            const truth = (alcove[wall] as unknown as Record<string, number>)[name]!;
            expect(value, `${wall}.${name}`).toBeCloseTo(truth, name.length === 2 ? 8 : name === 'c' ? 2 : 5);
          }
        }
      }),
      runs(20),
    );
  });
});

describe('marks', () => {
  it('lie on the true edge of the adjusted alcove', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const job = jobWith(fullPlan(plausibleAlcove(seed), { seed, top: chosen.fit!.top }), chosen);
        const result = solve(job);
        const adjusted = adjustedAlcove(result);
        for (const panel of PANELS) {
          for (const [edge, { marks }] of Object.entries(result.panels[panel].edges)) {
            for (const { u, v } of marks) {
              const [along, at] = edge === 'bottom' || edge === 'top' ? [u, v] : [v, u];
              expect(at).toBeCloseTo(trueEdge(adjusted, job, panel, edge as 'left', along), 6);
            }
          }
        }
      }),
      runs(25),
    );
  });
});

describe('outlines', () => {
  it('keep within 0.05 mm of the edges that they follow', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const job = jobWith(fullPlan(plausibleAlcove(seed), { seed, top: chosen.fit!.top }), chosen);
        const result = solve(job);
        const adjusted = adjustedAlcove(result);
        for (const panel of PANELS) {
          expect(outlineDistance(result.panels[panel].outline, trueOutline(adjusted, job, panel, 90))).toBeLessThan(
            0.05,
          );
        }
      }),
      runs(40),
    );
  });
});

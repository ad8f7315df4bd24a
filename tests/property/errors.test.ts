import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solve } from '../../src/core';
import { fullPlan, jobWith, markErrors, plausibleAlcove, type TrueAlcove, withBlunder } from '../simulate';
import { choices, PANELS, runs, seeds, surveyOf } from './arbitraries';

describe('a survey with instrument errors', () => {
  it('keeps about 95 % of marks within their ±', () => {
    let inside = 0;
    let all = 0;
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const { alcove, job } = surveyOf(seed, chosen);
        const { panels } = solve(job);
        for (const { edge, error, sd } of markErrors(alcove, job, panels)) {
          if (edge === 'top') continue;
          all++;
          if (Math.abs(error) <= 1.96 * sd) inside++;
        }
      }),
      runs(60),
    );
    // Marks of one alcove hang together, so the share over 60 alcoves scatters by over 1 %.
    expect(inside / all).toBeGreaterThan(0.91);
    expect(inside / all).toBeLessThan(0.985);
  });

  it('rarely has a suspect, and names a reading that is an inch off', () => {
    let suspected = 0;
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const { job } = surveyOf(seed, chosen);
        if (solve(job).adjustment.suspect !== null) suspected++;
        for (const id of ['corner-left-2', 'span-1-out', 'rim-back-2']) {
          const { suspect } = solve({ ...job, readings: withBlunder(job.readings, id, 25.4) }).adjustment;
          expect(suspect?.id).toBe(id);
          const right = job.readings.find((reading) => reading.id === id)!;
          expect(Math.abs(suspect!.fits - (right as { value: number }).value)).toBeLessThan(4);
        }
      }),
      runs(15),
    );
    expect(suspected).toBeLessThan(4);
  });
});

describe('a hump that no single bow can follow', () => {
  it('does not pass unnoticed', () => {
    fc.assert(
      fc.property(seeds, fc.constantFrom(...PANELS), (seed, wall) => {
        const smooth = plausibleAlcove(seed);
        const at = wall === 'back' ? 300 : 380;
        const humped = { ...smooth, humps: [{ wall, at, height: 130, rise: 12, radius: 180 }] };
        expect(noticed(smooth, seed)).toBe(false);
        expect(noticed(humped, seed)).toBe(true);
      }),
      runs(10),
    );
  });
});

/** Whether the adjustment finds a wall uneven, a reading suspect or the stated standard deviations too small. */
function noticed(alcove: TrueAlcove, seed: number): boolean {
  const { uneven, scale, suspect } = solve(jobWith(fullPlan(alcove, { seed }))).adjustment;
  return uneven.length > 0 || scale > 1 || suspect !== null;
}

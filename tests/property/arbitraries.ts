import fc from 'fast-check';
import { vi } from 'vitest';
import type { Job, JobInput } from '../../src/core';
import { fullPlan, jobWith, noisy, plausibleAlcove, type TrueAlcove } from '../simulate';

vi.setConfig({ testTimeout: 120_000 });

export const PANELS = ['back', 'left', 'right'] as const;

/** The same cases in every run; a failing alcove is reported as it is, since a seed has no smaller form. */
export const runs = (numRuns: number): fc.Parameters<unknown> => ({ seed: 20, numRuns, endOnFailure: true });

export const seeds = fc.integer({ min: 1, max: 1_000_000 });

/** Lengths to 0.01 mm. */
const mm = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 100 * min, max: 100 * max }).map((hundredths) => hundredths / 100);

/** Ways to build: thickness, bed, joints, top, set-back and a rim that may roll over to its apron. */
export const choices: fc.Arbitrary<Partial<JobInput>> = fc.record({
  fit: fc.record({
    thickness: mm(1, 16),
    bed: mm(0, 8),
    cornerJoint: mm(0, 6),
    rimJoint: mm(0, 8),
    top: mm(850, 1100),
    frontSetBack: mm(-20, 60),
    flexible: fc.boolean(),
  }),
  rim: fc.record({
    width: mm(720, 790),
    profile: fc.array(fc.tuple(mm(2, 15), mm(0, 6)), { maxLength: 6 }).map(contour),
  }),
});

/** Points [outward, rise] from the rim's plane on, each step outward and down from the one before. */
function contour(steps: [number, number][]): [number, number][] {
  const points: [number, number][] = [[0, 0]];
  for (const [across, drop] of steps) {
    const [outward, rise] = points.at(-1)!;
    points.push([outward + across, rise - drop]);
  }
  return points;
}

/** A plausible alcove and a job on it, read with the instruments' errors. */
export function surveyOf(seed: number, chosen: Partial<JobInput>): { alcove: TrueAlcove; job: Job } {
  const alcove = plausibleAlcove(seed);
  const readings = noisy(fullPlan(alcove, { seed, top: chosen.fit!.top }), seed);
  return { alcove, job: jobWith(readings, { ...chosen, fixtures: FIXTURES }) };
}

const FIXTURES: JobInput['fixtures'] = [
  { id: 'valve', kind: 'valve', wall: 'right', aboveRim: 330, fromBack: 381, hole: 95 },
  { id: 'spout', kind: 'spout', wall: 'right', aboveRim: 110, fromBack: 381, fromBackOf: 'wall', hole: 32 },
  { id: 'bar', kind: 'grab-bar', wall: 'left', aboveRim: 360, fromBack: 240, hole: 20 },
  { id: 'spray', kind: 'body-spray', wall: 'back', aboveRim: 700, fromPlumbLine: 210, hole: 40 },
];

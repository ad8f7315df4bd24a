import { type Job, type JobInput, type Result, solve } from '../../src/core';
import { fullPlan, jobWith, type TrueAlcove, withSd } from '../simulate';

/** Half the width of the box, its rim below the level line and its depth, mm. */
export const HALF = 762;
export const RIM = -700;
export const DEPTH = 762;

type Changes = { [K in 'back' | 'left' | 'right' | 'rim']?: Partial<TrueAlcove[K]> };

/** A plumb, square, level alcove, but for the changes. */
export function box({ back, left, right, rim }: Changes = {}): TrueAlcove {
  const flat = { y: 0, z: 0, yz: 0, yy: 0, zz: 0 };
  return {
    back: { y: 0, xy: 0, xx: 0, yy: 0, ...back },
    left: { c: -HALF, ...flat, ...left },
    right: { c: HALF, ...flat, ...right },
    rim: { c: RIM, x: 0, z: 0, xx: 0, zz: 0, ...rim },
    front: { left: { f0: DEPTH, f1: 0 }, right: { f0: DEPTH, f1: 0 } },
    humps: [],
  };
}

/** The result for an alcove read in full without error, priors as weak as a job allows. */
export function solved(alcove: TrueAlcove, choices: Partial<JobInput> = {}): { job: Job; result: Result } {
  const priors = { plumb: 200, square: 200, twist: 200, bow: 200, rimLevel: 200, frontPlumb: 200 };
  const job = jobWith(withSd(fullPlan(alcove), 1e-4), { priors, ...choices });
  return { job, result: solve(job) };
}

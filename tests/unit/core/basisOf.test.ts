import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { basisOf } from '../../../src/core/basisOf';
import { solve } from '../../../src/core/solve';
import { anyJob, slippedJob } from './anyJob';

describe('the basis of a result', () => {
  it('is all that a result follows from', () => {
    for (const [job, other] of fc.sample(fc.tuple(slippedJob, anyJob), { seed: 31, numRuns: 10 })) {
      const { name, place, finish, choices, prices, quote } = other;
      const dressed = { ...job, name, place: place ?? 'Upstairs', finish, choices, prices, quote };
      expect(basisOf(dressed)).toBe(basisOf(job));
      expect(solve(dressed)).toEqual(solve(job));
    }
  });

  it('is another for each reading, fit and trim', () => {
    for (const job of fc.sample(slippedJob, { seed: 32, numRuns: 10 })) {
      const [first, ...others] = job.readings;
      const changed = [
        { ...job, readings: others },
        { ...job, readings: [{ ...first!, sd: 9.75 }, ...others] },
        { ...job, fit: { ...job.fit, top: job.fit.top + 0.1 } },
        { ...job, trim: { ...job.trim, width: job.trim.width + 0.1 } },
        { ...job, display: job.display === 'in' ? ('mm' as const) : ('in' as const) },
      ];
      expect(new Set([job, ...changed].map(basisOf)).size).toBe(6);
    }
  });
});

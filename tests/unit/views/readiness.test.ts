import { expect, it } from 'vitest';
import { solve } from '../../../src/core';
import { blankJob } from '../../../src/job';
import { readiness } from '../../../src/views/findings/readiness';
import { solvedDemo } from '../scene/solvedDemo';

it('finds a full survey ready to cut by', () => {
  expect(readiness(solvedDemo().result)).toEqual({ unmeasured: [], uncertain: null });
});

it('names every size that a blank job lacks', () => {
  expect(readiness(solve(blankJob())).unmeasured).toEqual([
    'plumb line to the left corner',
    'plumb line to the right corner',
    'level line to the rim',
    'left corner to front edge',
    'right corner to front edge',
  ]);
});

it('tells how uncertain the cut edges of a few rough readings are', () => {
  const { result } = solvedDemo((job) => ({
    ...job,
    readings: job.readings
      .filter(({ kind }) => ['tape-to-corner', 'tape-to-rim', 'depth'].includes(kind))
      .map((reading) => ({ ...reading, sd: 8 })),
  }));
  const { unmeasured, uncertain } = readiness(result);
  expect(unmeasured).toEqual([]);
  expect(uncertain).toBeGreaterThan(3.2);
});

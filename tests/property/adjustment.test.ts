import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Job, type Reading, type Result, solve } from '../../src/core';
import { adjustedAlcove, exactValue, gapFromLine, instrumentSd, jobWith } from '../simulate';
import { choices, PANELS, runs, seeds, surveyOf } from './arbitraries';

const markSds = ({ panels }: Result): number[] =>
  PANELS.flatMap((panel) => Object.values(panels[panel].edges).flatMap(({ marks }) => marks.map(({ sd }) => sd)));

describe('adjusted readings', () => {
  it('are what the simulator reads in the adjusted alcove', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const { job } = surveyOf(seed, chosen);
        const result = solve(job);
        const alcove = adjustedAlcove(result);
        const adjusted = new Map(
          result.adjustment.readings.map(({ id, observed, residual }) => [id, observed + residual!]),
        );
        for (const reading of job.readings) {
          if (reading.kind === 'plumb') {
            const differences = reading.gaps.map(
              ({ height }, i) =>
                adjusted.get(`${reading.id}/${i}`)! - gapFromLine(alcove, reading.wall, reading.at, height, 0),
            );
            for (const difference of differences) expect(difference).toBeCloseTo(differences[0]!, 6);
          } else {
            expect(adjusted.get(reading.id), reading.id).toBeCloseTo(exactValue(alcove, reading), 6);
          }
        }
      }),
      runs(40),
    );
  });

  it('carry the sd of their instrument, and redundancy numbers that add up', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const { job } = surveyOf(seed, chosen);
        const { adjustment } = solve(job);
        for (const reading of job.readings) {
          const rows = adjustment.readings.filter(({ id }) => id === reading.id || id.startsWith(`${reading.id}/`));
          for (const row of rows) expect(row.sd).toBeCloseTo(instrumentSd(reading), 10);
        }
        const total = adjustment.readings.reduce((sum, { redundancy }) => sum + redundancy!, 0);
        expect(total).toBeLessThan(adjustment.dof);
        // What is left belongs to the priors, at most 1 each.
        expect(total).toBeGreaterThan(adjustment.dof - 23);
      }),
      runs(20),
    );
  });
});

describe('a reading that agrees', () => {
  it('never raises the sd of any mark', () => {
    fc.assert(
      fc.property(seeds, choices, fc.nat(), (seed, chosen, pick) => {
        const { job } = surveyOf(seed, chosen);
        const before = solve(job);
        const again = repeated(job.readings[pick % job.readings.length]!, before);
        const after = solve({ ...job, readings: [...job.readings, again] });
        const [sdsBefore, sdsAfter] = [markSds(before), markSds(after)];
        expect(sdsAfter.length).toBe(sdsBefore.length);
        sdsAfter.forEach((sd, i) => expect(sd).toBeLessThanOrEqual(sdsBefore[i]! + 1e-9));
        const sum = (values: number[]): number => values.reduce((total, each) => total + each, 0);
        expect(sum(sdsAfter)).toBeLessThan(sum(sdsBefore));
        expect(after.adjustment.dof).toBe(before.adjustment.dof + (again.kind === 'plumb' ? again.gaps.length - 1 : 1));
      }),
      runs(40),
    );
  });
});

describe('the order of the readings', () => {
  it('does not matter', () => {
    fc.assert(
      fc.property(
        seeds,
        choices,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (seed, chosen, numbers) => {
          const { job } = surveyOf(seed, chosen);
          const shuffled = job.readings
            .map((reading) => ({ reading, key: numbers.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ reading }) => reading);
          expectSameOutcome(solve({ ...job, readings: shuffled }), solve(job), 1);
        },
      ),
      runs(20),
    );
  });
});

describe('standard deviations', () => {
  // Coarser only: errors too large for the stated sd may rightly call for a richer wall.
  it('scale with those of the readings and priors', () => {
    fc.assert(
      fc.property(seeds, choices, fc.integer({ min: 11, max: 40 }), (seed, chosen, tenths) => {
        const { job } = surveyOf(seed, chosen);
        const reference = solve(scaled(job, 1));
        // A survey whose errors happen to fail the global test has its sds scaled up.
        fc.pre(reference.adjustment.scale === 1 && reference.adjustment.uneven.length === 0);
        expectSameOutcome(solve(scaled(job, tenths / 10)), reference, tenths / 10);
      }),
      runs(20),
    );
  });
});

/** The reading taken once more with the value that the adjustment predicts. */
function repeated(reading: Reading, { adjustment }: Result): Reading {
  const predicted = (id: string): number => {
    const row = adjustment.readings.find((each) => each.id === id)!;
    return row.observed + row.residual!;
  };
  const id = `${reading.id} again`;
  return reading.kind === 'plumb'
    ? { ...reading, id, gaps: reading.gaps.map((gap, i) => ({ ...gap, value: predicted(`${reading.id}/${i}`) })) }
    : { ...reading, id, value: predicted(reading.id) };
}

function scaled(job: Job, factor: number): Job {
  const readings = job.readings.map((reading) => ({ ...reading, sd: factor * instrumentSd(reading) }));
  const priors = Object.fromEntries(Object.entries(job.priors).map(([name, sd]) => [name, factor * sd]));
  return jobWith(readings, { fit: job.fit, rim: job.rim, fixtures: job.fixtures, priors });
}

function expectSameOutcome(result: Result, reference: Result, sdFactor: number): void {
  for (const panel of PANELS) {
    const [points, expected] = [result.panels[panel].outline, reference.panels[panel].outline];
    expect(points.length).toBe(expected.length);
    points.forEach((point, i) => {
      expect(Math.hypot(point[0] - expected[i]![0], point[1] - expected[i]![1])).toBeLessThan(1e-4);
    });
  }
  markSds(result).forEach((sd, i) => expect(sd).toBeCloseTo(sdFactor * markSds(reference)[i]!, 5));
}

import { describe, expect, it } from 'vitest';
import { type Job, type Reading, surveyPlan, type Unread } from '../../../../src/core';
import { blankJob } from '../../../../src/job/blank';

/** The planned reading with a value that an alcove of the supposed size would show. */
function read(where: Unread, id: string): Reading {
  if (where.kind === 'plumb') return { ...where, id, gaps: where.gaps.map(({ height }) => ({ height, value: 40 })) };
  const values = {
    'tape-to-corner': 762,
    'tape-to-rim': 740,
    span: 1524,
    depth: 760,
    square: 750,
    diagonal: 2200,
    angle: 90,
  };
  return { ...where, id, value: where.kind === 'straightedge' ? 0.1 : values[where.kind] } as Reading;
}

const placesOf = (job: Job, onTop: boolean) => surveyPlan(job, { onTop }).map(({ reading }) => reading);

describe('surveyPlan on top of what is read', () => {
  const blank = blankJob();
  const whole = placesOf(blank, true);

  it('is the whole plan where nothing is read', () => {
    expect(whole).toEqual(placesOf(blank, false));
  });

  it('shrinks with what is read, a reading that is off aside, and starts from its certainty', () => {
    const half = whole.slice(0, 30).map((where, i) => read(where, `r${i}`));
    const left = surveyPlan({ ...blank, readings: half }, { onTop: true });
    expect(left.length).toBeLessThan(0.7 * whole.length);
    expect(left[0]!.before).toBeLessThan(surveyPlan(blank)[0]!.before);
    const off = half.map((reading) => ({ ...reading, off: true }));
    expect(placesOf({ ...blank, readings: off }, true)).toEqual(whole);
  });
});

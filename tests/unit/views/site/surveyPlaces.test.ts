import { describe, expect, it } from 'vitest';
import type { PlannedReading, Unread } from '../../../../src/core';
import { blankJob } from '../../../../src/job/blank';
import { type Draft, type DraftReading, draftOf } from '../../../../src/job/draft';
import { nextStep, surveyOf } from '../../../../src/views/site/survey/survey-places';

const planOf = (...readings: Unread[]): PlannedReading[] =>
  readings.map((reading, i) => ({ step: i + 1, reading, round: 1, before: 9, after: 9, settled: 0 }));
const jobWith = (...readings: DraftReading[]): Draft['job'] => ({ ...draftOf(blankJob(), 'd').job, readings });

const left: Unread = { kind: 'tape-to-corner', side: 'left', height: 900 };
const rim: Unread = { kind: 'tape-to-rim', wall: 'back', at: 0 };
const hung: Unread = { kind: 'plumb', wall: 'back', at: 700, gaps: [{ height: -600 }, { height: 800 }] };

describe('surveyOf', () => {
  it('has an empty place for each reading of the plan, one for a place that is read twice', () => {
    const { places, steps } = surveyOf(jobWith(), planOf(left, rim, left));
    expect(places.map(({ id, where, times }) => [id, where, times])).toEqual([
      [null, left, 2],
      [null, rim, 1],
    ]);
    const [first, second] = places.map(({ key }) => key);
    expect(steps).toEqual([
      { place: first, field: 0, round: 1 },
      { place: second, field: 0, round: 1 },
      { place: first, field: 1, round: 1 },
    ]);
  });

  it('lets a reading taken near enough fill its place, once', () => {
    const near: DraftReading = { id: 'r1', kind: 'tape-to-corner', side: 'left', height: 925, value: 730 };
    const far: DraftReading = { id: 'r2', kind: 'tape-to-corner', side: 'left', height: 935, value: 730 };
    const other: DraftReading = { id: 'r3', kind: 'tape-to-corner', side: 'right', height: 900, value: 730 };
    const ids = (job: Draft['job']) => surveyOf(job, planOf(left, rim)).places.map(({ id }) => id);
    expect(ids(jobWith(near))).toEqual(['r1', null]);
    expect(ids(jobWith(far))).toEqual([null, null, 'r2']);
    expect(ids(jobWith(other))).toEqual([null, null, 'r3']);
    expect(ids(jobWith({ ...near, off: true }))).toEqual([null, null, 'r1']);
  });

  it('takes a line hung twice as two readings, gap by gap from the top', () => {
    const { places, steps } = surveyOf(jobWith(), planOf(hung, hung));
    expect(places).toHaveLength(2);
    expect(new Set(places.map(({ key }) => key)).size).toBe(2);
    expect(steps.map(({ field }) => field)).toEqual([1, 0, 1, 0]);
    const read: DraftReading = {
      id: 'p1',
      kind: 'plumb',
      wall: 'back',
      at: 700,
      gaps: [
        { height: -600, value: 30 },
        { height: 800, value: 31 },
      ],
    };
    expect(surveyOf(jobWith(read), planOf(hung, hung)).places.map(({ id }) => id)).toEqual(['p1', null]);
  });

  it('takes a straightedge laid the other way round for the same', () => {
    const a = { at: -700, height: 0 };
    const b = { at: 700, height: 0 };
    const edge: DraftReading = { id: 'e', kind: 'straightedge', wall: 'back', from: b, to: a, value: 1 };
    const planned: Unread = { kind: 'straightedge', wall: 'back', from: a, to: b };
    expect(surveyOf(jobWith(edge), planOf(planned)).places.map(({ id }) => id)).toEqual(['e']);
  });
});

describe('nextStep', () => {
  const steps = ['a', 'b', 'c'].map((place) => ({ place, field: 0, round: null }));
  const openIn = (open: string) => (step: { place: string }) => open.includes(step.place);
  it('is the first open one after the one in hand, from the start again after the last', () => {
    expect(nextStep(steps, steps[0]!, openIn('abc'))).toBe(steps[1]);
    expect(nextStep(steps, steps[1]!, openIn('a'))).toBe(steps[0]);
    expect(nextStep(steps, null, openIn('bc'))).toBe(steps[1]);
    expect(nextStep(steps, steps[1]!, openIn(''))).toBeNull();
    expect(nextStep(steps, { place: 'gone', field: 0 }, openIn('c'))).toBe(steps[2]);
  });
});

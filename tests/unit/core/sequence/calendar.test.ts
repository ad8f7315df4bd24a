import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../../src/core';
import { bookTasks, criticalPath, cureTime, type Task } from '../../../../src/core/sequence';
import { jobWith } from '../../../simulate';

const HOUR = 60;
const DAY = 24 * HOUR;
const schedule = { ...jobWith([]).schedule, from: 8 * HOUR, to: 16 * HOUR, days: [1, 2, 3, 4, 5] };
const task = (id: string, duration: number, after: string[] = [], more: Partial<Task> = {}): Task => ({
  id,
  label: id,
  kind: 'work',
  duration,
  after,
  people: 1,
  cautions: [],
  joints: [],
  ...more,
});

describe('bookTasks', () => {
  it('stops at the end of the day and goes on the next', () => {
    const [first] = bookTasks([task('a', 10 * HOUR)], schedule);
    expect(first).toEqual({ id: 'a', start: 8 * HOUR, finish: DAY + 10 * HOUR, who: [1] });
  });
  it('leaves out the weekend', () => {
    // 2026-11-27 is a Friday
    const [first] = bookTasks([task('a', 9 * HOUR)], { ...schedule, start: '2026-11-27' });
    expect(first!.finish).toBe(3 * DAY + 9 * HOUR);
  });
  it('lets a wait run through the night', () => {
    const [, cure, next] = bookTasks(
      [task('a', HOUR), task('cure', 24 * HOUR, ['a'], { kind: 'wait', people: 0 }), task('b', HOUR, ['cure'])],
      schedule,
    );
    expect(cure).toEqual({ id: 'cure', start: 9 * HOUR, finish: DAY + 9 * HOUR, who: [] });
    expect(next!.start).toBe(DAY + 9 * HOUR);
  });
  it('has one person do one thing at a time, and two people two', () => {
    const both = [task('a', HOUR), task('b', HOUR)];
    expect(bookTasks(both, { ...schedule, people: 1 })[1]!.start).toBe(9 * HOUR);
    expect(bookTasks(both, { ...schedule, people: 2 }).map(({ start, who }) => [start, who])).toEqual([
      [8 * HOUR, [1]],
      [8 * HOUR, [2]],
    ]);
  });
  it('waits for both where a step wants two', () => {
    const steps = [task('a', HOUR), task('lift', HOUR, [], { people: 2 })];
    expect(bookTasks(steps, { ...schedule, people: 2 })[1]!.start).toBe(9 * HOUR);
  });
  it('goes on through many days whose end is no whole minute', () => {
    const day = { ...schedule, from: 4.8e-187, to: 1082.5949791956145, days: [1, 2, 3, 4, 5, 6, 7] };
    const [first] = bookTasks([task('a', 100 * 1082.5949791956145 - 1)], day);
    expect(first!.finish).toBeCloseTo(99 * DAY + 1081.5949791956145, 6);
  });
});

describe('criticalPath', () => {
  it('names tasks that wait for each other', () => {
    expect(criticalPath([task('a', 1, ['b']), task('b', 1, ['a']), task('c', 1)])).toEqual({
      ok: false,
      stuck: ['a', 'b'],
    });
  });
});

describe('cureTime', () => {
  it('doubles for ten degrees colder', () => expect(cureTime(24, 11)).toBeCloseTo(48, 9));
});

describe('schedule in a job file', () => {
  it('refuses a day that ends before it begins', () => {
    const parsed = parseJob({ ...jobWith([]), schedule: { from: 900, to: 800 } });
    expect(parsed).toMatchObject({ ok: false, faults: [{ path: 'schedule.to' }] });
  });
});

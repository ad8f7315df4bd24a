import { describe, expect, it } from 'vitest';
import { durationWords, whenWords } from '../../../../src/output/words';
import { jobWith } from '../../../simulate';

const { schedule } = jobWith([]);

describe('durationWords', () => {
  it.each([
    [0, '0 min'],
    [59.6, '1 h'],
    [80, '1 h 20 min'],
    [1440, '24 h'],
  ])('%f minutes are %s', (minutes, words) => expect(durationWords(minutes)).toBe(words));
});

describe('whenWords', () => {
  it('counts days where the job has no first day', () =>
    expect(whenWords(1440 + 8 * 60 + 5, schedule)).toBe('day 2, 08:05'));
  it('names the date from the first day on', () =>
    expect(whenWords(2 * 1440 + 9 * 60, { ...schedule, start: '2026-02-27' })).toBe('Sun 1 Mar 09:00'));
  it('takes the last half minute of a day for the next', () =>
    expect(whenWords(1439.7, schedule)).toBe('day 2, 00:00'));
});

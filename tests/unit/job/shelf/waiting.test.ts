import { describe, expect, it } from 'vitest';
import { countOn, type Waiting, waitingFrom } from '../../../../src/job/shelf/waiting';

const day = 86_400_000;
const start = Date.UTC(2026, 4, 1);

/** The app is started on these days; which job goes when. */
function starts(days: readonly number[], deleted = ['a']): { day: number; over: string[] }[] {
  let waiting: Waiting | null = null;
  return days.map((at) => {
    const counted = countOn(waiting, deleted, start + at * day, 30);
    waiting = waitingFrom(JSON.stringify(counted.waiting));
    expect(waiting).toEqual(counted.waiting);
    return { day: at, over: counted.over };
  });
}
const goesAt = (days: readonly number[]) => starts(days).find(({ over }) => over.includes('a'))?.day;

describe('a deleted job', () => {
  it('goes after 30 days of daily starts, not before', () => {
    expect(goesAt(Array.from({ length: 40 }, (_, i) => i))).toBe(30);
  });

  it('goes after 30 days of weekly starts', () => {
    expect(goesAt([0, 7, 14, 21, 28, 35])).toBe(35);
  });

  it('stays where the clock jumps ten years ahead, and when it is set right again', () => {
    expect(goesAt([0, 1, 3650, 3651, 2, 3, 4])).toBeUndefined();
  });

  it('stays where it was deleted on a day in 1970 and the clock is set right', () => {
    expect(goesAt([-20_000, -19_999, 0, 1, 2])).toBeUndefined();
  });

  it('goes after 30 days on a clock that stood ahead when it was deleted', () => {
    expect(goesAt([3650, ...Array.from({ length: 40 }, (_, i) => i)])).toBe(30);
  });

  it('that came back and is deleted again starts anew', () => {
    const first = countOn(null, ['a'], start, 30).waiting;
    const back = countOn(first, [], start + 5 * day, 30).waiting;
    expect(back.since).toEqual({});
    expect(countOn(back, ['a'], start + 10 * day, 30).waiting.since).toEqual({ a: 10 * day });
  });
});

it('is counted from nothing where what was kept is no count', () => {
  for (const text of [undefined, '', '{', '{"seenAt":1}', '{"seenAt":null,"counted":0,"since":{}}'])
    expect(waitingFrom(text)).toBeNull();
});

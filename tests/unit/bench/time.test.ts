import { describe, expect, it } from 'vitest';
import { share, timeTogether } from '../../bench/time';

describe('share', () => {
  it('takes the value at a part of the sorted values', () => {
    const values = [9, 1, 5, 3, 7];
    expect([0, 0.5, 0.75, 1].map((part) => share(values, part))).toEqual([1, 5, 7, 9]);
    expect(values).toEqual([9, 1, 5, 3, 7]);
  });

  it('refuses to make up a value', () => {
    expect(() => share([], 0.5)).toThrow('no values');
  });
});

describe('timeTogether', () => {
  it('calls every work in turns and gives each a time', () => {
    const calls: string[] = [];
    const works = { a: () => calls.push('a'), b: () => calls.push('b') };
    const times = timeTogether(works, { rounds: 3, leastMs: 0 });
    expect(calls.slice(-6)).toEqual(['a', 'b', 'a', 'b', 'a', 'b']);
    expect(Object.keys(times)).toEqual(['a', 'b']);
    expect(Math.min(...Object.values(times))).toBeGreaterThanOrEqual(0);
  });
});

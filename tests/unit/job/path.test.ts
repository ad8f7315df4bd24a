import { describe, expect, it } from 'vitest';
import { fieldKey, pathOfKey, startsWith, valueAt, withValueAt } from '../../../src/job/path';

const job = {
  fit: { top: 900 },
  readings: [
    { id: 'a/b', value: 1 },
    { id: 'r2', gaps: [{ height: 5 }, { height: 6 }] },
  ],
};

describe('valueAt', () => {
  it('finds list items by id and nested ones by place', () => {
    expect(valueAt(job, ['fit', 'top'])).toBe(900);
    expect(valueAt(job, ['readings', 'a/b', 'value'])).toBe(1);
    expect(valueAt(job, ['readings', 'r2', 'gaps', 1, 'height'])).toBe(6);
    expect(valueAt(job, ['readings', 'none', 'value'])).toBeUndefined();
  });
});

describe('withValueAt', () => {
  it('changes one place and shares the rest', () => {
    const changed = withValueAt(job, ['readings', 'r2', 'gaps', 0, 'height'], 7);
    expect(valueAt(changed, ['readings', 'r2', 'gaps', 0, 'height'])).toBe(7);
    expect(valueAt(job, ['readings', 'r2', 'gaps', 0, 'height'])).toBe(5);
    expect(changed.fit).toBe(job.fit);
    expect(changed.readings[0]).toBe(job.readings[0]);
  });

  it('makes objects that lack and removes with undefined', () => {
    const made = withValueAt<Record<string, unknown>>({ instruments: {} }, ['instruments', 'tape', 'sd'], 0.8);
    expect(made).toEqual({ instruments: { tape: { sd: 0.8 } } });
    expect(withValueAt(job.readings[0], ['value'], undefined)).toEqual({ id: 'a/b' });
  });

  it('starts a list and adds at its end, not beyond', () => {
    const once = withValueAt<Record<string, unknown>>({}, ['repeats', 0], 5);
    expect(once).toEqual({ repeats: [5] });
    expect(withValueAt(once, ['repeats', 1], 6)).toEqual({ repeats: [5, 6] });
    expect(withValueAt(once, ['repeats', 2], 6)).toEqual({ repeats: [5] });
  });

  it('leaves all as it is where the id is not in the list', () => {
    expect(withValueAt(job, ['readings', 'gone', 'value'], 3).readings).toBe(job.readings);
  });
});

describe('fieldKey', () => {
  it('tells ids with odd characters apart and reads back', () => {
    const path = ['readings', 'a"/b', 'gaps', 2] as const;
    expect(pathOfKey(fieldKey(path))).toEqual(path);
    expect(fieldKey(['a', 1])).not.toBe(fieldKey(['a', '1']));
    expect(startsWith(path, ['readings', 'a"/b'])).toBe(true);
    expect(startsWith(path, ['readings', 'a'])).toBe(false);
  });
});

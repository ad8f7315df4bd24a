import { expect, it } from 'vitest';
import { historyLine, lastKept, readHistory } from '../../bench/history';

const about = { date: '2026-01-02', commit: 'abc', machine: '2 cores' };
const rows = [
  { what: 'time', value: 3.00004, unit: 'ms', against: { what: 'general', value: 12 } },
  { what: 'worst', value: Number.NaN, unit: 'mm' },
];

it('keeps a run to a line and reads it back, without what is no number', () => {
  const text = historyLine(about, [{ name: 'adjust', rows }]);
  expect(text.endsWith('\n')).toBe(true);
  expect(readHistory(text)).toEqual([
    { ...about, figures: [{ bench: 'adjust', what: 'time', value: 3, unit: 'ms', ratio: 0.25 }] },
  ]);
});

it('finds a figure in the last run that has it', () => {
  const line = (value: number, what: string) =>
    historyLine(about, [{ name: 'exact', rows: [{ what, value, unit: 'mm' }] }]);
  const runs = readHistory(line(1, 'worst') + line(2, 'worst') + line(3, 'median'));
  expect(lastKept(runs, 'exact', 'worst')?.value).toBe(2);
  expect(lastKept(runs, 'adjust', 'worst')).toBeNull();
});

it('names the line that cannot be read', () => {
  expect(() => readHistory(`${historyLine(about, [])}{"date": 5}\n`)).toThrow('Line 2');
});

it('refuses two figures of one name', () => {
  const twice = [rows[0]!, rows[0]!];
  expect(() => historyLine(about, [{ name: 'adjust', rows: twice }])).toThrow('adjust: time');
});

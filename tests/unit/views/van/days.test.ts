import { expect, it } from 'vitest';
import type { SequenceStep } from '../../../../src/core';
import { byDay } from '../../../../src/views/van/days';
import { slipWords, untilWords } from '../../../../src/views/van/step-words';

const step = (id: string, start: number) => ({ id, start }) as SequenceStep;
const sequence = [step('a', 480), step('b', 900), step('c', 1440 + 480)];

it('gathers steps by the day on which they begin', () => {
  expect(byDay(sequence, {}).map(({ day, steps }) => [day, steps.map(({ id }) => id)])).toEqual([
    ['Day 1', ['a', 'b']],
    ['Day 2', ['c']],
  ]);
  expect(byDay(sequence, { start: '2026-03-06' }).map(({ day }) => day)).toEqual(['Fri 6 Mar', 'Sat 7 Mar']);
});

it('says how far a step can slip, and takes rounding for none', () => {
  expect(slipWords({ critical: false, float: 80 })).toBe('can slip 1 h 20 min');
  expect(slipWords({ critical: false, float: 1e-9 })).toBe('cannot slip');
  expect(slipWords({ critical: true, float: 0 })).toBe('cannot slip');
});

it('names the day on which a step ends only where it is another', () => {
  expect(untilWords({ start: 480, finish: 495 }, {})).toBe('08:15');
  expect(untilWords({ start: 900, finish: 2340 }, {})).toBe('day 2, 15:00');
});

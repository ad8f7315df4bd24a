import { expect, it } from 'vitest';
import { beginChoices, endChoices } from '../../../../src/views/van/hours';

const hours = { from: 8 * 60 + 10, to: 16 * 60 + 30 };

it('offers half hours that leave at least an hour of work, and the one in hand', () => {
  const begins = beginChoices(hours);
  expect(begins[0]).toEqual(['0', '00:00']);
  expect(begins.at(-1)).toEqual([String(15 * 60 + 30), '15:30']);
  expect(begins).toContainEqual(['490', '08:10']);
  const ends = endChoices(hours);
  expect(ends[0]).toEqual([String(9 * 60 + 30), '09:30']);
  expect(ends.at(-1)).toEqual(['1440', '24:00']);
});

import { expect, it } from 'vitest';
import { standing } from '../../../../src/job/journal';

const at = (revision: number, text: string) => ({ id: 'a', draft: { text }, changedAt: 1, revision });

it.each([
  ['a job that was never written', at(0, 'x'), undefined, 'newer'],
  ['what follows on the kept one', at(3, 'xy'), at(3, 'x'), 'newer'],
  ['a write before it that was lost with the page', at(4, 'xy'), at(3, 'x'), 'newer'],
  ['what was written as the page went', at(3, 'xy'), at(4, 'xy'), 'written'],
  ['a job that was written by another page since', at(3, 'xy'), at(4, 'z'), 'apart'],
])('knows %s', (_, noted, kept, stands) => {
  expect(standing(noted, kept)).toBe(stands);
});

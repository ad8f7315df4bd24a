import { expect, it } from 'vitest';
import { offcutWords, placedWords, usedWords } from '../../../../src/output';
import { jobWith } from '../../../simulate';

it('names a piece on its sheet with its part, size and turn', () => {
  const pieces = { trim: [], legs: [], fillers: [], shelves: [] };
  const place = { x: 0, y: 0, width: 600, height: 20 };
  expect(
    placedWords(
      { ...place, piece: 'panels.back', turned: true, part: { number: 2, of: 3 } },
      jobWith([], { display: 'mm' }),
      { pieces },
    ),
  ).toBe('Back panel (part 2 of 3): 600.0 mm × 20.0 mm, turned a quarter');
});

it('lists at most the six largest offcuts, and says where there are none', () => {
  const offcut = { x: 0, y: 0, width: 10, height: 20 };
  expect(offcutWords({ offcuts: [] }, { display: 'mm' })).toBe('No offcut worth keeping.');
  const words = offcutWords({ offcuts: Array.from({ length: 8 }, () => offcut) }, { display: 'mm' });
  expect(words.match(/×/g)).toHaveLength(6);
});

it('tells how much of the bought sheets is used, and nothing where none holds a piece', () => {
  expect(usedWords({ used: 3, bought: 4 })).toBe('Used: 75 % of what is bought.');
  expect(usedWords({ used: 0, bought: 0 })).toBe('');
});

import { expect, it } from 'vitest';
import { adviceWords } from '../../../../src/output/drawing/adviceWords';

const advice = { where: 'panels.right.holes.valve', what: 'the valve is to lie low', source: 'a standard, section 1' };

it('says whether advice is met, by how much it is missed, where it is from, and that local code decides', () => {
  expect(adviceWords({ ...advice, met: true, howMuch: 0 }, { display: 'in' })).toBe(
    'The valve is to lie low. So it is here (a standard, section 1; local code decides).',
  );
  expect(adviceWords({ ...advice, met: false, howMuch: 25.4 }, { display: 'in' })).toBe(
    'The valve is to lie low. Not so here: off by 1" (a standard, section 1; local code decides).',
  );
});

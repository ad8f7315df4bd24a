import { expect, it } from 'vitest';
import type { DraftReading } from '../../../../../src/job';
import { lengthsIn } from '../../../../../src/views/parts/useLengths';
import { scaleWords } from '../../../../../src/views/site/scan/scale-words';

const span = { kind: 'span' } as DraftReading;

it('tells how wrong a scale may be, in the unit of the job, until a tape reading corrects it', () => {
  // 1.96 × 2 mm/m is 3.92 mm over a metre and 5.97 mm (15/64 in) over 60 in, rounded up.
  expect(scaleWords([], 2, lengthsIn('mm'))).toMatch(/±4\.0 mm over 1000\.0/);
  expect(scaleWords([], 2, lengthsIn('in'))).toMatch(/±1\/4" over 60"/);
  expect(scaleWords([{ kind: 'plumb' }, { ...span, off: true }], 2, lengthsIn('mm'))).toMatch(/^No tape reading/);
  expect(scaleWords([span], 2, lengthsIn('mm'))).toMatch(/^One tape reading/);
  expect(scaleWords([span, span], 2, lengthsIn('mm'))).toMatch(/^2 tape readings/);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_LENGTH, parseLength } from '../../../src/core/length';
import { refusalOf } from './reading';

describe('what is refused', () => {
  it.each([
    ['', 'needs a length, such as 59 13/16, 4\' 11 13/16" or 1519 mm'],
    [' \t\n ', 'needs a length'],
    ['abc', '“abc” is not understood; write a length such as 59 13/16 in'],
    ['NaN', '“nan” is not understood'],
    ['Infinity', '“infinity” is not understood'],
    ['∞', '“∞” does not belong in a length'],
    ['5 ± 1', '“±” does not belong in a length'],
    ['59² in', '“²” does not belong in a length'],
    ['59 13/0', '“13/0” divides by 0; write a fraction such as 13/16'],
    ['13/100', '“13/100” is finer than 1/64'],
    ['3/five', '“3/five” has a fraction that is not two whole numbers; write it like 13/16'],
    ['13/', 'has a fraction that is not two whole numbers'],
    ['/16', 'has a fraction that is not two whole numbers'],
    ['1/2/3', 'has a fraction that is not two whole numbers'],
    ['13/16.5', 'has a fraction that is not two whole numbers'],
    ['59.5 13/16', '“59.5 13/16” has a fraction after a decimal'],
    ['59.5" 13/16', 'has a fraction after a decimal'],
    ['59 13/16 3', '“3” cannot follow “59 13/16” without a unit between; write one length such as 59 13/16'],
    ['59 13', '“13” cannot follow “59”'],
    ['4 11 13/16', '“11 13/16” cannot follow “4” without a unit between; write one length'],
    ['1 519 mm', '“519 mm” cannot follow “1”'],
    ['59 16/16', '“16/16” is no less than a whole; write 60'],
    ['59 18/16', '“18/16” is no less than a whole; write 60 1/8'],
    ['19/16', '“19/16” is no less than a whole; write 1 3/16, or 1 9/16 if a space is missing'],
    ['5913/16', 'write 369 9/16, or 59 13/16 if a space is missing'],
    ['1e3', '“e” is not a unit known here; use in, ft, mm, cm or m'],
    ['0x10', '“x” is not a unit known here'],
    ['30 x 60', '“x” is not a unit known here'],
    ['5 yd', '“yd” is not a unit known here'],
    ['4\' 13"', '“13"” is no less than 1 ft; keep it below 12 in'],
    ["1'519", '“519” is no less than 1 ft'],
    ['1 m 100 cm', '“100 cm” is no less than 1 m; keep it below 100 cm'],
    ['12 cm 10 mm', 'is no less than 1 cm; keep it below 10 mm'],
    ['4.5\' 3"', 'has a part of a ft before in; write whole ft'],
    ['4 1/2\' 3"', 'has a part of a ft before in'],
    ['4 ft 30 cm', '“4 ft 30 cm” does not add up to one length'],
    ['59 in 2 in', 'does not add up to one length'],
    ['11 in 4 ft', 'does not add up to one length'],
    ['4 ft 11 in 3', 'does not add up to one length'],
    ['1 m 50', '“50” needs a unit; write cm or mm after it'],
    ['5 - 3', '“5 - 3” reads as a difference'],
    ['59 - 13/16', 'reads as a difference; write the one length meant, such as 59-13/16'],
    ['59 -13/16', 'reads as a difference'],
    ['59- 13/16', 'reads as a difference'],
    ['59 + 1/2', '“59 + 1/2” is a sum; write the length that it comes to'],
    ['--5', '“-” stands where a number should'],
    ['"', '“"” stands where a number should'],
    ['5 in in', '“in” stands where a number should'],
    ['-', '“-” breaks off; write the number that should follow'],
    ['59 and', '“59 and” breaks off'],
    ['1.2.3', '“1.2.3” has its points and commas where no number has them'],
    ['1,2,3', '“1,2,3” has its points and commas where no number has them'],
    ['1,519', '“1,519” can mean 1.519 or 1519; write one of these'],
    ['99999999', '“99999999” is longer than 3937 in (100 m), the longest taken; check the figures and the unit'],
    ['9'.repeat(199), 'is longer than 3937 in (100 m)'],
    ['9'.repeat(400), 'is too long for one length'],
  ])('%j', (text, message) => expect(refusalOf(text)).toContain(message));

  it('names the unit shown', () => {
    expect(refusalOf('', 'mm')).toBe('needs a length, such as 1519.2, 151.9 cm or 59 13/16 in');
    expect(refusalOf('99999999', 'mm')).toContain('longer than 100000 mm (100 m)');
  });

  it('quotes no more than a line', () => {
    for (const text of ['x'.repeat(190), 'x'.repeat(100_000)]) expect(refusalOf(text).length).toBeLessThan(200);
  });
});

describe('any text', () => {
  const pieces = fc.constantFrom(
    ...'0 1 5 13 16 59 1/2 13/16 5/0 . , - + / \' " ′ ″ ½ ⅜ ¹³⁄₁₆ ² in ft mm cm m and a an of point half sixteenths'.split(
      ' ',
    ),
    ...'five fifty hundred thousand thirty seconds 16ths foot inch − minus ∞ é 𝟝 \u0000'.split(' '),
    ' ',
  );
  const texts = fc.oneof(
    fc.array(pieces, { maxLength: 9 }).map((words) => words.join(' ')),
    fc.array(pieces, { maxLength: 9 }).map((words) => words.join('')),
    fc.string({ unit: 'binary', maxLength: 30 }),
  );

  it('gives a length within the limits or a sentence', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom('in', 'mm'), (text, unit) => {
        const parsed = parseLength(text, unit);
        if (parsed.ok) expect(Math.abs(parsed.mm)).toBeLessThanOrEqual(LONGEST_LENGTH);
        else expect(parsed.message).toMatch(/^(?:“.+”|needs) .*[a-z]/s);
      }),
      { seed: 20, numRuns: 3000 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mmOf, refusalOf } from './reading';

const inches = (whole: number, above = 0, below = 1) => ((whole * below + above) * 127) / (5 * below);

describe('dictated lengths', () => {
  it.each([
    ['fifty nine and thirteen sixteenths', inches(59, 13, 16)],
    ['Fifty-nine and thirteen-sixteenths inches.', inches(59, 13, 16)],
    ['fifty nine thirteen sixteenths', inches(59, 13, 16)],
    ['fifty nine and 13/16', inches(59, 13, 16)],
    ['59 and thirteen sixteenths', inches(59, 13, 16)],
    ['59 and 13 sixteenths', inches(59, 13, 16)],
    ['59 and 13 16ths', inches(59, 13, 16)],
    ['59 and a half', inches(59, 1, 2)],
    ['fifty nine inches and a half', inches(59, 1, 2)],
    ['fifty nine and half', inches(59, 1, 2)],
    ['four foot eleven and a half', inches(59, 1, 2)],
    ['four feet eleven inches and a half', inches(59, 1, 2)],
    ['four foot eleven and thirteen sixteenths', inches(59, 13, 16)],
    ['four-foot-eleven', inches(59)],
    ['four foot two', inches(50)],
    ['59-inch', inches(59)],
    ['a quarter inch', inches(0, 1, 4)],
    ['quarter of an inch', inches(0, 1, 4)],
    ['half an inch', inches(0, 1, 2)],
    ['half', inches(0, 1, 2)],
    ['a half inch', inches(0, 1, 2)],
    ['one half', inches(0, 1, 2)],
    ['three quarter inch', inches(0, 3, 4)],
    ['three-quarters of an inch', inches(0, 3, 4)],
    ['a sixteenth', inches(0, 1, 16)],
    ['an eighth', inches(0, 1, 8)],
    ['nine and three eights', inches(9, 3, 8)],
    ['inch and a quarter', inches(1, 1, 4)],
    ['an inch and a half', inches(1, 1, 2)],
    ['one and a half inches', inches(1, 1, 2)],
    ['one hundred and two and three eighths', inches(102, 3, 8)],
    ['a hundred two and three eighths', inches(102, 3, 8)],
    ['one hundred and thirteen sixteenths', inches(100, 13, 16)],
    ['one hundred and twenty three sixteenths', inches(120, 3, 16)],
    ['twenty three sixteenths', inches(20, 3, 16)],
    ['twenty-three thirty-seconds', inches(0, 23, 32)],
    ['twenty and three thirty seconds', inches(20, 3, 32)],
    ['one and three sixty fourths', inches(1, 3, 64)],
    ['minus five thirty seconds', -inches(0, 5, 32)],
    ['negative a quarter inch', -inches(0, 1, 4)],
    ['point seven five inches', inches(0, 3, 4)],
    ['point seventy five inches', inches(0, 3, 4)],
    ['zero point two oh five inches', inches(0, 205, 1000)],
    ['one point five metres', 1500],
    ['one metre fifty two centimetres', 1520],
    ['half a metre', 500],
    ['fifteen hundred and nineteen millimetres', 1519],
    ['one thousand five hundred and nineteen millimeters', 1519],
    ['five millimetres', 5],
    ['zero', 0],
  ])('%s', (text, mm) => expect(mmOf(text)).toBeCloseTo(mm, 10));

  it.each([
    ['five', '“five” needs its unit when it is spoken; say inches or millimetres after it, or write figures'],
    ['fifty nine', '“fifty nine” needs its unit'],
    ['one point five', '“one point five” needs its unit'],
    [
      'twenty three thirty seconds',
      '“twenty three thirty seconds” can mean 23/32 or 20 3/32; say “and” after the whole',
    ],
    ['four foot and a half', 'can mean a part of a foot or of an inch; write the unit after “a half”'],
    ['seven fifty', '“seven fifty” is not one number'],
    ['twelve twelve inches', '“twelve twelve” is not one number'],
    ['five point', '“five point” is not one number'],
    ['one hundred and', 'breaks off'],
    ['fifty nine half', 'has a fraction that is no less than a whole; say it like “fifty nine and a half”'],
    ['nineteen sixteenths', 'has a fraction that is no less than a whole'],
    ['sixteenths', '“sixteenths” is not one number'],
    ['fifty nine heavy', '“heavy” is not a unit known here'],
    ['about five inches', '“about” is not understood'],
    ['a', '“a” is not understood'],
  ])('refuses %s', (text, message) => expect(refusalOf(text)).toContain(message));

  it('looks like inches where millimetres are shown and a fraction tells so', () =>
    expect(refusalOf('fifty nine and thirteen sixteenths', 'mm')).toContain('write 59 13/16 in (1519.2 mm)'));
});

describe('number words', () => {
  const small = 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'
    .concat(' seventeen eighteen nineteen')
    .split(' ');
  const tens = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

  /** The English for a whole number, with the joints given. */
  function english(n: number, and: string, hyphen: string): string {
    if (n < 20) return small[n]!;
    if (n < 100) return tens[Math.floor(n / 10)]! + (n % 10 ? hyphen + small[n % 10]! : '');
    const [scale, word] = n < 1000 ? [100, 'hundred'] : [1000, 'thousand'];
    const rest = n % scale;
    return `${english(Math.floor(n / scale), and, hyphen)} ${word}${rest ? and + english(rest, and, hyphen) : ''}`;
  }
  const wholes = fc.integer({ min: 0, max: 99_999 });
  const ands = fc.constantFrom(' ', ' and ');
  const hyphens = fc.constantFrom(' ', '-');
  const finest: Record<number, string> = { 8: 'eighths', 16: 'sixteenths', 32: 'thirty-seconds', 64: 'sixty-fourths' };

  it('stand for the number that they spell', () => {
    fc.assert(
      fc.property(wholes, ands, hyphens, (n, and, hyphen) => {
        expect(mmOf(`${english(n, and, hyphen)} millimetres`)).toBe(n);
      }),
      { seed: 20, numRuns: 1000 },
    );
  });

  it('carry a fraction after them', () => {
    const fractions = fc
      .constantFrom(8, 16, 32, 64)
      .chain((below) => fc.tuple(fc.integer({ min: 1, max: below - 1 }), fc.constant(below)));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3900 }), fractions, (whole, [above, below]) => {
        const text = `${english(whole, ' ', '-')} and ${english(above, ' ', '-')} ${finest[below]}`;
        expect(mmOf(text)).toBe(inches(whole, above, below));
      }),
      { seed: 20, numRuns: 1000 },
    );
  });
});

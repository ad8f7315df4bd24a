import fc from 'fast-check';
import { formatLength, parseLength } from '../../../src/core';
import { must, target } from '../target';

const bits = [
  ...'0123456789',
  ' ',
  '/',
  '-',
  '+',
  '.',
  ',',
  "'",
  '"',
  '½',
  '¾',
  '⅛',
  '⁄',
  'mm',
  'cm',
  'm',
  'in',
  'ft',
  'inch',
  'feet',
  'foot',
  'and',
  'a',
  'half',
  'quarter',
  'sixteenths',
  'thirty',
  'nine',
  'fifty',
  'hundred',
  'eleven',
  'point',
  'minus',
  'e',
  'x',
  '\u00a0',
  '٣',
  '−',
  '😀',
  'NaN',
  'Infinity',
];

export const typedTargets = [
  target({
    name: 'length',
    about:
      'Any text for a length is read as a finite length that prints and reads back, or refused with what to write.',
    cases: fc.tuple(
      fc.oneof(
        fc.array(fc.constantFrom(...bits), { maxLength: 10 }).map((some) => some.join('')),
        fc.array(fc.constantFrom(...bits), { maxLength: 8 }).map((some) => some.join(' ')),
        fc.string({ maxLength: 220, unit: 'binary' }),
      ),
      fc.constantFrom('in' as const, 'mm' as const),
    ),
    check: ([text, unit]) => {
      const read = parseLength(text, unit);
      if (!read.ok) {
        must(/\p{L}/u.test(read.message), 'refused without a reason');
        return;
      }
      must(Number.isFinite(read.mm), 'not finite');
      const again = parseLength(formatLength(read.mm, { unit }), unit);
      must(again.ok && Math.abs(again.mm - read.mm) <= (unit === 'in' ? 25.4 / 32 : 0.5) + 1e-9, 'does not read back');
    },
    inTests: 4000,
  }),
];

import { describe, expect, it } from 'vitest';
import { formatLength, MM_PER_INCH, parseLength } from '../../src/core/length';

const mmOf = (text: string) => {
  const parsed = parseLength(text, 'in');
  return parsed.ok ? parsed.mm : Number.NaN;
};

describe('the inch', () => {
  it('is 25.4 mm exactly (international yard and pound agreement, 1959)', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(mmOf('1 in')).toBe(25.4);
    expect(mmOf('1 ft')).toBe(304.8);
    expect(mmOf('3 ft')).toBe(914.4);
  });

  /** Follow from the exact inch by division. */
  it.each([
    ['1/2', 12.7],
    ['1/4', 6.35],
    ['1/8', 3.175],
    ['1/16', 1.5875],
    ['1/32', 0.79375],
    ['1/64', 0.396875],
  ])('%s in', (text, mm) => expect(mmOf(text)).toBe(mm));
});

describe('lengths printed in both units', () => {
  /** 2010 ADA Standards for Accessible Design 607.4.2.1, 608.6, 609.4: mm rounded to 5. */
  it.each([
    ['8 in', 205],
    ['10 in', 255],
    ['33 in', 840],
    ['36 in', 915],
    ['59 in', 1500],
  ])('%s is about %d mm (2010 ADA Standards)', (text, mm) => {
    expect(Math.abs(mmOf(text) - mm)).toBeLessThan(2.5);
    expect(formatLength(mmOf(text), { unit: 'in' })).toBe(text.replace(' in', '"'));
  });

  /** From memory: ISO 216 and ANSI/ASME Y14.1 paper sizes as commonly given in the other unit. */
  it('A4 is 8 1/4 × 11 11/16 in, letter 215.9 × 279.4 mm', () => {
    expect([210, 297].map((mm) => formatLength(mm, { unit: 'in' }))).toEqual(['8 1/4"', '11 11/16"']);
    expect(['8 1/2', '11'].map(mmOf)).toEqual([215.9, 279.4]);
  });
});

import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../../src/core';
import { pasted } from '../../../../src/views/site/entry/pasted';

describe('pasted', () => {
  it('takes a text apart by lines and tabs, and keeps commas and spaces', () => {
    expect(pasted('28 13/16\r\n1,234 m\t48 5/8"\n\n')).toEqual(['28 13/16', '1,234 m', '48 5/8"']);
    expect(pasted(' 59 1/2 ')).toEqual(['59 1/2']);
    expect(pasted('\n')).toEqual([]);
  });

  it.each([
    ['1.234 m', 1234],
    ['1.234m', 1234],
    ['1,234 m', 1234],
    ['1234 mm', 1234],
    ['1234mm', 1234],
    ['123.4 cm', 1234],
    ['48 5/8"', 48.625 * 25.4],
    ['48.625 in', 48.625 * 25.4],
    ['4\' 0 5/8"', 48.625 * 25.4],
  ])('a laser measure that sends %s is understood in either unit', (text, mm) => {
    for (const unit of ['in', 'mm'] as const) {
      const parsed = parseLength(text, unit);
      expect(parsed.ok && parsed.mm).toBeCloseTo(mm, 6);
    }
  });
});

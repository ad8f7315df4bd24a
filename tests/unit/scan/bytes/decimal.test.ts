import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalAt } from '../../../../src/scan/bytes';

const read = (text: string, point?: number) => decimalAt(new TextEncoder().encode(text), 0, text.length, point);

describe('decimalAt', () => {
  it('reads every number as the language does', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(read(String(value))).toBe(Number(String(value)));
        expect(read(value.toExponential(12))).toBe(Number(value.toExponential(12)));
      }),
      { numRuns: 2000 },
    );
  });

  it('reads what files hold', () => {
    const texts = [
      '0',
      '-0.5',
      '+3',
      '.25',
      '7.',
      '1e3',
      '1E-05',
      '-2.5e+02',
      '123456789012345678901234567890',
      '1e-400',
      '0.1',
      '000012.50',
    ];
    expect(texts.map((text) => read(text))).toEqual(texts.map(Number));
  });

  it('takes a comma for the point where it is told to', () => {
    expect(read('-1,25', 44)).toBe(-1.25);
    expect(read('2,7182818284590452353', 44)).toBe(Math.E);
  });

  it('is not a number where none stands', () => {
    for (const text of ['', '-', '.', 'e5', '1e', '1e+', '1.2.3', '12a', 'nan', 'inf', '0x10', '1,5', '--1', ' 1']) {
      expect(read(text), text).toBeNaN();
    }
  });
});

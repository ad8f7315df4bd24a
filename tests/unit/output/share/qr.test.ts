import { describe, expect, it } from 'vitest';
import { qrCode, qrSvg } from '../../../../src/output/share';
import { readQr } from '../readQr';

describe('qrCode', () => {
  it('gives a square with a clear border of four and the three finder patterns', () => {
    const code = qrCode('https://example.org/#link/1.abc');
    if (!code.ok) throw new Error(code.message);
    const { size, dark } = code;
    expect(dark).toHaveLength(size);
    for (const row of dark) expect(row).toHaveLength(size);
    for (let i = 0; i < size; i++) {
      for (const edge of [0, 3, size - 4, size - 1]) expect([dark[edge]![i], dark[i]![edge]]).toEqual([false, false]);
    }
    const finder = (x: number, y: number) =>
      dark.slice(y, y + 7).map((row) =>
        row
          .slice(x, x + 7)
          .map(Number)
          .join(''),
      );
    const pattern = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];
    expect(finder(4, 4)).toEqual(pattern);
    expect(finder(size - 11, 4)).toEqual(pattern);
    expect(finder(4, size - 11)).toEqual(pattern);
  });

  it.each([20, 300, 1200, 2300])('is read by an independent reader: %i characters', (length) => {
    const address = `https://example.org/#link/1.${'aZ09-_'.repeat(length).slice(0, length)}`;
    const code = qrCode(address);
    if (!code.ok) throw new Error(code.message);
    const DOTS = 4;
    const side = code.size * DOTS;
    expect(readQr(side, side, (x, y) => code.dark[Math.floor(y / DOTS)]![Math.floor(x / DOTS)]!)).toBe(address);
  });

  it('says in a sentence when the address is too long', () => {
    const code = qrCode(`https://example.org/#${'a'.repeat(2600)}`);
    expect(code).toMatchObject({ ok: false, message: expect.stringMatching(/too long for a QR code.*\.$/) });
  });
});

describe('qrSvg', () => {
  it('covers exactly the dark modules', () => {
    const code = qrCode('https://example.org/#link/1.abc');
    if (!code.ok) throw new Error(code.message);
    const drawn = [...qrSvg(code).matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)].reduce((sum, run) => sum + Number(run[3]), 0);
    expect(drawn).toBe(code.dark.flat().filter(Boolean).length);
  });
});

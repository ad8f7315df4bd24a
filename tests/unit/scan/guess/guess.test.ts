import { describe, expect, it } from 'vitest';
import { extentOf, guessUnit, guessUp, sizeOf } from '../../../../src/scan';

const box = (x: number, y: number, z: number) => ({ low: [0, 0, 0], high: [x, y, z] }) as Parameters<typeof sizeOf>[0];

describe('extentOf', () => {
  it('leaves out stray points', () => {
    const positions = new Float32Array(3000);
    for (let i = 0; i < 1000; i++) positions.set([i / 1000, (2 * i) / 1000, -i / 1000], 3 * i);
    positions.set([500, -300, 900], 0);
    const [x, y, z] = sizeOf(extentOf(positions));
    expect(x).toBeCloseTo(0.98, 1);
    expect(y).toBeCloseTo(1.96, 1);
    expect(z).toBeCloseTo(0.98, 1);
  });
});

describe('guessUnit', () => {
  it.each([
    [[1.5, 2.2, 0.8], 'm'],
    [[1500, 2200, 800], 'mm'],
    [[60, 88, 31], 'in'],
    [[12, 9.5, 8], 'ft'],
    [[150, 410, 80], 'cm'],
  ] as const)('takes %s for %s', ([x, y, z], expected) => {
    expect(guessUnit({ unit: null }, box(x, y, z))).toBe(expected);
  });

  it('goes by what the file says', () => {
    expect(guessUnit({ unit: 1000 }, box(1500, 2200, 800))).toBe('m');
  });

  it('takes the nearest where none fits', () => {
    expect(guessUnit({ unit: null }, box(90_000, 10, 10))).toBe('mm');
    expect(guessUnit({ unit: null }, box(0.01, 0.01, 0.01))).toBe('m');
  });
});

describe('guessUp', () => {
  it('goes by what the file says', () => {
    expect(guessUp({ up: '-x', format: 'PLY' }, box(1, 9, 1))).toBe('-x');
  });

  it('takes the usual axis of the format, unless the other is clearly longer', () => {
    expect(guessUp({ up: null, format: 'PLY' }, box(1.5, 2, 2))).toBe('+z');
    expect(guessUp({ up: null, format: 'PLY' }, box(1.5, 2.2, 0.8))).toBe('+y');
    expect(guessUp({ up: null, format: 'OBJ' }, box(1.5, 2, 2))).toBe('+y');
    expect(guessUp({ up: null, format: 'OBJ' }, box(1.5, 0.8, 2.2))).toBe('+z');
  });
});

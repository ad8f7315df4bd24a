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

/** Evenly spread points in a box of this size; with `faces`, as many again on the two faces square to an axis. */
function filled(size: readonly [number, number, number], faces: 0 | 1 | 2 | null = null): Float32Array<ArrayBuffer> {
  const positions = new Float32Array(3 * 4000);
  for (let i = 0; i < 4000; i++) {
    const spread = [(i * 0.754877) % 1, (i * 0.56984) % 1, (i * 0.43016) % 1];
    if (faces !== null && i % 2 === 0) spread[faces] = i % 4 === 0 ? 0.01 : 0.99;
    positions.set(
      spread.map((share, axis) => share * size[axis]!),
      3 * i,
    );
  }
  return positions;
}

describe('guessUp', () => {
  const guessed = (
    format: 'PLY' | 'OBJ',
    size: readonly [number, number, number],
    faces: 0 | 1 | 2 | null = null,
    up: '-x' | null = null,
  ) => {
    const positions = filled(size, faces);
    return guessUp({ up, format, positions }, extentOf(positions));
  };

  it('goes by what the file says', () => {
    expect(guessed('PLY', [1, 9, 1], null, '-x')).toBe('-x');
  });

  it('takes the usual axis of the format, unless the other is clearly longer', () => {
    expect(guessed('PLY', [1.5, 2, 2])).toBe('+z');
    expect(guessed('PLY', [1.5, 2.2, 0.8])).toBe('+y');
    expect(guessed('OBJ', [1.5, 2, 2])).toBe('+y');
    expect(guessed('OBJ', [1.5, 0.8, 2.2])).toBe('+z');
  });

  it('knows a room by its floor and ceiling, however long it is', () => {
    expect(guessed('PLY', [5.7, 8.9, 2.4], 2)).toBe('+z');
    expect(guessed('PLY', [5.7, 2.4, 8.9], 1)).toBe('+y');
    expect(guessed('OBJ', [5.7, 2.4, 8.9], 1)).toBe('+y');
  });
});

import { describe, expect, it } from 'vitest';
import type { MaterialLine } from '../../../../src/core';
import {
  cartridgeName,
  cartridgeWords,
  jointRuns,
  jointWidthAlong,
  movementBasis,
  movementUse,
} from '../../../../src/output';

const mm = { display: 'mm' } as const;
const inches = { display: 'in' } as const;

it('gives the width of a joint along it, as one figure, or as a fillet over a closed joint', () => {
  const widths = (...all: number[]) => ({ widths: all.map((width, i): [number, number] => [i, width]) });
  expect(jointWidthAlong(widths(3.175, 3.175), inches)).toBe('1/8" all along');
  expect(jointWidthAlong(widths(4, 3.5, 2.5, 3, 2), mm)).toBe('4.0 mm, 2.5 mm, 2.0 mm');
  expect(jointWidthAlong(widths(-0.5, 0, 2), mm)).toBe('0.0 mm, 0.0 mm, 2.0 mm');
  expect(jointWidthAlong(widths(0, -1), mm)).toBe('fillet only');
});

it('tells every run in which a joint is closed', () => {
  const runs = jointRuns([
    { id: 'clean', joints: [] },
    { id: 'seal.1', joints: [{ id: 'a', from: 0, to: 900 }] },
    {
      id: 'seal.2',
      joints: [
        { id: 'a', from: 900, to: 1000 },
        { id: 'b', from: 0, to: 400 },
      ],
    },
  ]);
  expect([runs('a'), runs('b'), runs('c')]).toEqual(['1, 2', '2', '']);
});

// Contents by the exact definition of the US fluid ounce, 231/128 in³.
it.each([
  [298.7, '10.1 oz'],
  [300, '300 mL'],
  [828.1, '28 oz'],
  [310, null],
])('knows %f mL as %s', (contents, name) => expect(cartridgeName(contents)).toBe(name));

it('counts cartridges in words', () => {
  const line: Omit<MaterialLine, 'packs'> = {
    id: 'sealant',
    label: 'sealant',
    unit: 'mL',
    rule: '',
    inputs: [],
    quantity: 500.2,
  };
  expect(cartridgeWords({ ...line, packs: { size: 298.7, count: 2, leftOver: 97 } })).toBe(
    'Sealant: 501 mL, 2 cartridges of 10.1 oz.',
  );
  expect(cartridgeWords({ ...line, packs: { size: 600, count: 1, leftOver: 99 } })).toContain('1 cartridge of 600 mL.');
});

describe('movement', () => {
  const moves = { least: 0.24, most: 0.31, width: 2.3, share: 0.135, used: 0.54 };
  it('tells how far and how much of the class', () => {
    expect(movementUse({ filler: 'sealant', moves }, { display: 'mm' })).toBe('0.2 to 0.3 mm: 54 %');
    expect(movementUse({ filler: 'sealant', moves: { ...moves, least: 0.31, used: 1.2 } }, { display: 'mm' })).toBe(
      '0.3 mm: 120 %, too much',
    );
    expect(movementUse({ filler: 'sealant', moves: null }, { display: 'mm' })).toBe('fillet only');
    expect(movementUse({ filler: 'caulk', moves: null }, { display: 'mm' })).toBe('dry');
    expect(movementUse({ filler: 'sealant', moves }, { display: 'in' })).toBe('0.009 to 0.012 in: 54 %');
  });
  it('names what it is reckoned by, ranges in order', () => {
    const movement = { expansion: 75, expansionMost: 68, swelling: 0, humidity: 20, swing: 15, capability: 0.125 };
    const words = movementBasis({ supplies: { movement } as never, display: 'mm' });
    expect(words).toContain('68 to 75 × 10⁻⁶ per °C and 0 × 10⁻⁶ per %');
    expect(words).toContain('15 °C and 20 % of change');
    expect(words).toContain('12.5 % of its width (class 12.5)');
  });
  it('goes by degrees Fahrenheit beside inches', () => {
    const movement = { expansion: 36, swelling: 0, humidity: 20, swing: 15, capability: 0.25 };
    const words = movementBasis({ supplies: { movement } as never, display: 'in' });
    expect(words).toContain('grows 20 × 10⁻⁶ per °F');
    expect(words).toContain('27 °F and 20 % of change');
    expect(words).toContain('wallboard behind it that grows 8.9 and 7.2');
    expect(words).not.toContain('°C');
  });
});

import { expect, it } from 'vitest';
import { inputAmount, jointWidthWords } from '../../../../src/output';

const mm = { display: 'mm' } as const;
const inches = { display: 'in' } as const;

it('gives the width of a joint as one figure, a range, or a fillet over a closed joint', () => {
  const widths = (...all: number[]) => ({ widths: all.map((width, i): [number, number] => [i, width]) });
  expect(jointWidthWords(widths(3.175, 3.175), inches)).toBe('1/8"');
  expect(jointWidthWords(widths(4, 2.5, 3), mm)).toBe('2.5 mm to 4.0 mm');
  expect(jointWidthWords(widths(-0.5, 2), mm)).toBe('0.0 mm to 2.0 mm');
  expect(jointWidthWords(widths(0, -1), mm)).toBe('fillet only');
});

it.each([
  [{ label: 'spacing', value: 101.6, unit: 'mm' }, '4"'],
  [{ label: 'waste', value: 0.15, unit: 'share' }, '15 %'],
  [{ label: 'area', value: 5_182_608, unit: 'mm²' }, '5.18 m²'],
  [{ label: 'for each m²', value: 50, unit: 'mL' }, '50 mL'],
  [{ label: 'dots', value: 416, unit: 'pieces' }, '416'],
] as const)('writes %o as %s', (input, words) => expect(inputAmount(input, inches)).toBe(words));

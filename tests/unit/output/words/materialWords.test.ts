import { expect, it } from 'vitest';
import { inputAmount } from '../../../../src/output';

const inches = { display: 'in' } as const;

it.each([
  [{ label: 'spacing', value: 101.6, unit: 'mm' }, '4"'],
  [{ label: 'waste', value: 0.15, unit: 'share' }, '15 %'],
  [{ label: 'area', value: 5_182_608, unit: 'mm²' }, '5.18 m²'],
  [{ label: 'for each m²', value: 50, unit: 'mL' }, '50 mL'],
  [{ label: 'dots', value: 416, unit: 'pieces' }, '416'],
] as const)('writes %o as %s', (input, words) => expect(inputAmount(input, inches)).toBe(words));

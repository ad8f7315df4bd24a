import { expect, it } from 'vitest';
import { strainText, unfoldingWords } from '../../../../src/output';
import { fitted, jobOf } from '../../core/panel/fitting';
import { alcoveOf } from '../../core/skewedAlcove';

const flexible = { fit: { flexible: true } };
const words = (twist: number) => {
  const { panel } = fitted(alcoveOf({ 'back.twist': twist }), 'back', flexible);
  return { strain: panel.flat.unfolding.strain, ...unfoldingWords(panel, jobOf({ ...flexible, display: 'mm' })) };
};

it('says that a rigid sheet is not stretched', () => {
  const { panel } = fitted(alcoveOf({ 'back.twist': 1e-5 }), 'back');
  expect(panel.flat.unfolding).toEqual({ strain: 0, at: [], height: [], strains: [] });
  expect(unfoldingWords(panel, jobOf()).head).toMatch(/nothing is stretched/);
});

it('holds what is left against what the cuts keep to', () => {
  const little = words(4e-6);
  expect(little).toMatchObject({
    weight: 'good',
    more: expect.stringContaining('less than the straight cuts keep to'),
  });
  const much = words(1.2e-4);
  expect(much).toMatchObject({ weight: 'warn', more: expect.stringContaining('leave that much at the edges') });
  expect(much.strain / little.strain).toBeCloseTo(900, -2);
  expect(much.head).toContain(strainText(much.strain));
});

it('maps it over the panel, most in the middle of its edges and the same at the worst place as stated', () => {
  const { panel } = fitted(alcoveOf({ 'back.twist': 2e-5 }), 'back', flexible);
  const { strain, at, height, strains } = panel.flat.unfolding;
  expect([strains.length, strains[0]!.length]).toEqual([height.length, at.length]);
  const [middle, corner] = [strains[4]!, strains[0]!];
  expect(middle[0]! / strain).toBeGreaterThan(0.9);
  expect(corner[0]! / strain).toBeLessThan(0.7);
  expect(Math.max(...strains.flat()) / strain).toBeCloseTo(1, 1);
});

import { expect, it } from 'vitest';
import { cartridgeChoice, cartridgeChoices } from '../../../../src/views/van/cartridges';

it.each([298.7, 310])('offers what holds among the sizes: %f mL', (contents) => {
  const offered = cartridgeChoices(contents).map(([value]) => value);
  expect(offered).toContain(cartridgeChoice(contents));
  expect(new Set(offered).size).toBe(offered.length);
});

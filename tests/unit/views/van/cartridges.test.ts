import { expect, it } from 'vitest';
import { cartridgeChoice, cartridgeChoices, cartridgeName } from '../../../../src/views/van/cartridges';

// Contents by the exact definition of the US fluid ounce, 231/128 in³.
it.each([
  [298.7, '10.1 oz'],
  [300, '300 mL'],
  [828.1, '28 oz'],
  [310, null],
])('knows %f mL as %s', (contents, name) => expect(cartridgeName(contents)).toBe(name));

it.each([298.7, 310])('offers what holds among the sizes: %f mL', (contents) => {
  const offered = cartridgeChoices(contents).map(([value]) => value);
  expect(offered).toContain(cartridgeChoice(contents));
  expect(new Set(offered).size).toBe(offered.length);
});

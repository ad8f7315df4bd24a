import { expect, it } from 'vitest';
import { againstYardstick } from '../../bench/yardstick';

it('puts times without a reference of their own against the yardstick, and nothing else', () => {
  const own = { what: 'a', value: 1, unit: 'ms', against: { what: 'package', value: 2 } };
  const length = { what: 'b', value: 1, unit: 'mm' };
  const [first, second, third] = againstYardstick([own, length, { what: 'c', value: 6, unit: 'ms' }], 3);
  expect(first).toBe(own);
  expect(second).toBe(length);
  expect(third?.against?.value).toBe(3);
});

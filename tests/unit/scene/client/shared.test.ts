import { expect, it } from 'vitest';
import { Shared } from '../../../../src/scene/client/shared';

it('makes a thing once for all that use it, and frees it after the last', () => {
  const made: string[] = [];
  const freed: string[] = [];
  const shared = new Shared<{ dispose(): void }>();
  const take = (key: string) =>
    shared.take(key, () => {
      made.push(key);
      return { dispose: () => freed.push(key) };
    });
  const [first, second, other] = [take('stone'), take('stone'), take('ribs')];
  expect(second.thing).toBe(first.thing);
  expect(other.thing).not.toBe(first.thing);
  expect(made).toEqual(['stone', 'ribs']);
  first.release();
  first.release();
  expect(freed).toEqual([]);
  const third = take('stone');
  second.release();
  expect(freed).toEqual([]);
  third.release();
  expect(freed).toEqual(['stone']);
  take('stone');
  expect(made).toEqual(['stone', 'ribs', 'stone']);
});

import { expect, it } from 'vitest';
import { keptBy } from '../../../src/job/kept-by';

it('hands out what was made for the same key, of the last few, and tries again what failed', async () => {
  const asked: string[] = [];
  const work = keptBy(
    ({ key }: { key: string; note: string }) => key,
    2,
    async ({ key, note }) => {
      asked.push(`${key} ${note}`);
      if (note === 'down') throw new Error('the worker stopped');
      return { key };
    },
  );
  const first = await work({ key: 'a', note: 'one' });
  expect(await work({ key: 'a', note: 'two' })).toBe(first);
  await expect(work({ key: 'b', note: 'down' })).rejects.toThrow('stopped');
  expect(await work({ key: 'a', note: 'three' })).toBe(first);
  expect(await work({ key: 'b', note: 'up' })).toEqual({ key: 'b' });
  expect(asked).toEqual(['a one', 'b down', 'b up']);
  // Asked for while it is made, it is made once; a third key drops the one that nobody asked for longest.
  const both = await Promise.all([work({ key: 'c', note: 'at once' }), work({ key: 'c', note: 'again' })]);
  expect(both[1]).toBe(both[0]);
  expect(await work({ key: 'b', note: 'kept' })).toEqual({ key: 'b' });
  expect(await work({ key: 'a', note: 'anew' })).not.toBe(first);
  expect(asked).toEqual(['a one', 'b down', 'b up', 'c at once', 'a anew']);
});

import { expect, it } from 'vitest';
import { keptBy } from '../../../src/job/kept-by';

it('hands out what was made last for the same key, and tries again what failed', async () => {
  const asked: string[] = [];
  const work = keptBy(
    ({ key }: { key: string; note: string }) => key,
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
});

import { describe, expect, it } from 'vitest';
import { openKeep, openSession, StorageFault } from '../../../../src/job';
import { testJob } from '../testJob';

const forEver = () => new Promise<never>(() => undefined);
const job = { id: 'a', draft: 'words', changedAt: 1, revision: 0 };

describe('without storage', () => {
  it.each([
    ['the browser knows none', () => Promise.reject(new ReferenceError('indexedDB is not defined')), 'blocked'],
    ['it is forbidden', () => Promise.reject(new DOMException('no', 'SecurityError')), 'blocked'],
    ['it never answers', forEver, 'blocked'],
    ['it has no room', () => Promise.reject(new DOMException('full', 'QuotaExceededError')), 'full'],
    ['it breaks', () => Promise.reject(new DOMException('?', 'UnknownError')), 'failed'],
  ] as const)('works in memory where %s', async (_, open, trouble) => {
    const opened = await openKeep(open, 20);
    expect(opened.trouble).toBe(trouble);
    expect(await opened.keep.put(job)).toBe(1);
    await opened.keep.makeCurrent('a');
    expect(await opened.keep.current()).toEqual({ ...job, revision: 1 });
    expect(await opened.keep.put(job)).toBeNull();
  });

  it('says all the while that nothing is kept', async () => {
    const { draft, state, shelf } = await openSession({
      solve: forEver,
      first: testJob(),
      ...(await openKeep(() => Promise.reject(new DOMException('no', 'SecurityError')))),
    });
    draft.getState().write(['name'], 'In memory');
    await expect.poll(async () => (await shelf.list())[0]?.name).toBe('In memory');
    expect(state.getState()).toMatchObject({ keeping: 'not-kept', trouble: 'blocked' });
  });
});

it('a fault keeps its kind', () => {
  expect(StorageFault.of(new StorageFault('held')).trouble).toBe('held');
});

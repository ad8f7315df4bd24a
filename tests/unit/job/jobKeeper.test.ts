import { expect, it, vi } from 'vitest';
import { type KeptJob, memoryKeep, noJournal } from '../../../src/job';
import { draftOf } from '../../../src/job/draft';
import { JobKeeper } from '../../../src/job/job-keeper';
import { testJob } from './testJob';

const named = (name: string) => draftOf({ ...testJob(), name }, 'a');
const silent = { kept: () => undefined, failed: () => undefined, overtaken: () => undefined, cleared: () => undefined };

it('writes what is asked for at the very moment at which a write ends', async () => {
  const keep = memoryKeep();
  let asked = false;
  const keeper: JobKeeper = new JobKeeper(keep, 0, {
    ...silent,
    kept: () => {
      if (asked) return;
      asked = true;
      queueMicrotask(() => keeper.request(named('second')));
    },
  });
  keeper.request(named('first'));
  await expect.poll(async () => (await keep.job('a'))?.draft).toEqual(named('second'));
});

it('tries what failed once more with the next request, and not in a tight circle before', async () => {
  const keep = memoryKeep();
  let tries = 0;
  const troubles: string[] = [];
  const full = () => {
    tries++;
    return Promise.reject(new DOMException('full', 'QuotaExceededError'));
  };
  const flaky = { put: full as typeof keep.put, job: keep.job };
  const keeper = new JobKeeper(flaky, 0, { ...silent, failed: (trouble) => troubles.push(trouble) });
  keeper.request(named('first'));
  await expect.poll(() => troubles).toEqual(['full']);
  await new Promise((later) => setTimeout(later, 20));
  expect(tries).toBe(1);
  flaky.put = keep.put;
  await keeper.flush();
  expect((await keep.job('a'))?.draft).toEqual(named('first'));
});

it('has each draft noted before the write begins, and struck off when it is written', async () => {
  const keep = memoryKeep();
  const notes = new Map<string, KeptJob>();
  const journal = {
    ...noJournal,
    note: (job: KeptJob) => notes.set(job.id, job) === notes,
    clear: (id: string) => void notes.delete(id),
  };
  const keeper = new JobKeeper(keep, 0, silent, journal);
  keeper.request(named('first'));
  expect(notes.get('a')).toMatchObject({ draft: named('first'), revision: 0 });
  keeper.request(named('second'));
  expect(notes.get('a')).toMatchObject({ draft: named('second'), revision: 1 });
  await keeper.flush();
  expect((await keep.job('a'))?.draft).toEqual(named('second'));
  expect(notes.size).toBe(0);
});

it('keeps the note of what could not be written', async () => {
  const notes: KeptJob[] = [];
  const journal = { ...noJournal, note: (job: KeptJob) => notes.push(job) > 0, clear: () => void notes.splice(0) };
  const keeper = new JobKeeper({ ...memoryKeep(), put: () => Promise.reject(new Error('no')) }, 4, silent, journal);
  keeper.request(named('first'));
  await keeper.flush();
  expect(notes.at(-1)).toMatchObject({ draft: named('first'), revision: 4 });
  keeper.drop();
});

it('tries what failed again by itself after a while, and less and less often', async () => {
  vi.useFakeTimers();
  try {
    const keep = memoryKeep();
    let tries = 0;
    const put: typeof keep.put = async (job) => {
      tries++;
      if (tries < 4) throw new DOMException('full', 'QuotaExceededError');
      return keep.put(job);
    };
    const keeper = new JobKeeper({ ...keep, put }, 0, silent);
    keeper.request(named('first'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(tries).toBe(2);
    await vi.advanceTimersByTimeAsync(1900);
    expect(tries).toBe(2);
    await vi.advanceTimersByTimeAsync(5000);
    expect(tries).toBe(4);
    expect((await keep.job('a'))?.draft).toEqual(named('first'));
    expect(keeper.settled).toBe(true);
  } finally {
    vi.useRealTimers();
  }
});

it('keeps the job anew where the storage was cleared, and what was typed meanwhile', async () => {
  const keep = memoryKeep();
  const cleared: string[] = [];
  const keeper = new JobKeeper(keep, 0, { ...silent, cleared: (job) => cleared.push(job) });
  keeper.request(named('first'));
  await keeper.flush();
  await keep.removeForGood('a');
  keeper.request(named('second'));
  keeper.request(named('third'));
  await keeper.flush();
  expect(cleared).toEqual(['a']);
  expect(await keep.job('a')).toMatchObject({ draft: named('third') });
});

import { expect, it } from 'vitest';
import type { Job, Result } from '../../../src/core';
import { type Journal, type Keep, type KeptJob, memoryKeep, openSession } from '../../../src/job';
import { draftOf } from '../../../src/job/draft';
import { testJob } from './testJob';

const journalOf = (...jobs: KeptJob[]): Journal => {
  const notes = new Map(jobs.map((job) => [job.id, job]));
  return {
    note: (job) => notes.set(job.id, job) === notes,
    read: (id) => notes.get(id) ?? null,
    ids: () => [...notes.keys()],
    clear: (id) => void notes.delete(id),
  };
};
const named = (id: string, name: string) => draftOf({ ...testJob(), name }, id);
const open = (keep: Keep, journal: Journal) =>
  openSession({
    solve: async (job: Job) => ({ name: job.name }) as unknown as Result,
    keep,
    journal,
    first: testJob(),
  });
const record = (id: string, name: string, revision: number): KeptJob => ({
  id,
  draft: named(id, name),
  changedAt: 1,
  revision,
});
const keepOf = async (...jobs: KeptJob[]) => {
  const keep = memoryKeep();
  await keep.bringIn(jobs, []);
  if (jobs[0]) await keep.makeCurrent(jobs[0].id);
  return keep;
};

it('opens with what a killed page had typed and not written', async () => {
  const keep = await keepOf(record('a', 'Before', 3));
  const journal = journalOf(record('a', 'As typed', 3));
  const { draft } = await open(keep, journal);
  expect(draft.getState().draft.job.name).toBe('As typed');
  await expect.poll(async () => (await keep.job('a'))?.draft).toMatchObject({ job: { name: 'As typed' } });
  await expect.poll(() => journal.ids()).toEqual([]);
});

it('shows what was typed though it still cannot be written, and keeps the note', async () => {
  const keep = await keepOf(record('a', 'Before', 3));
  keep.put = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));
  const journal = journalOf(record('a', 'As typed', 3));
  const { draft, state } = await open(keep, journal);
  expect(draft.getState().draft.job.name).toBe('As typed');
  await expect.poll(() => state.getState().trouble).toBe('full');
  expect(journal.read('a')?.draft).toMatchObject({ job: { name: 'As typed' } });
});

it('keeps it as a job of its own where the job was changed since', async () => {
  const keep = await keepOf(record('a', 'Changed there', 5));
  const journal = journalOf(record('a', 'As typed', 3));
  const { draft, state } = await open(keep, journal);
  expect(draft.getState().draft.job.name).toBe('As typed (as typed here)');
  expect(state.getState().notice).toMatch(/kept beside it/);
  await expect.poll(async () => (await keep.jobs()).length).toBe(2);
  expect((await keep.job('a'))?.draft).toMatchObject({ job: { name: 'Changed there' } });
  await expect.poll(() => journal.ids()).toEqual([]);
});

it('writes what was typed into other jobs, new ones too', async () => {
  const keep = await keepOf(record('a', 'In hand', 1), record('b', 'Before', 2));
  const journal = journalOf(record('b', 'As typed', 2), record('c', 'New', 0));
  await open(keep, journal);
  expect((await keep.job('b'))?.draft).toMatchObject({ job: { name: 'As typed' } });
  expect((await keep.job('c'))?.draft).toMatchObject({ job: { name: 'New' } });
  expect(journal.ids()).toEqual([]);
});

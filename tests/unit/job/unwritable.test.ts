import { expect, it } from 'vitest';
import type { Job, Result } from '../../../src/core';
import { type Journal, jobText, type Keep, type KeptJob, memoryKeep, noJournal, openSession } from '../../../src/job';
import { blankJob } from '../../../src/job/blank';
import { testJob } from './testJob';

const journalIn = (notes: Map<string, KeptJob>): Journal => ({
  note: (job) => notes.set(job.id, job) === notes,
  read: (id) => notes.get(id) ?? null,
  ids: () => [...notes.keys()],
  clear: (id) => void notes.delete(id),
});

/** Storage whose writes can be made to fail, with a session on it. */
async function unwritable(
  { journal = journalIn(new Map()), store = memoryKeep() }: { journal?: Journal; store?: Keep } = {},
  broken = false,
) {
  const down = { now: broken };
  const writes = ['put', 'makeCurrent', 'bringIn', 'markDeleted', 'removeForGood', 'remember'] as const;
  const keep = { ...store };
  for (const name of writes)
    Object.assign(keep, {
      [name]: (...given: unknown[]) =>
        down.now
          ? Promise.reject(new DOMException('aborted', 'AbortError'))
          : (store[name] as (...all: unknown[]) => Promise<unknown>)(...given),
    });
  let ids = 0;
  const session = await openSession({
    solve: async (job: Job) => ({ name: job.name }) as unknown as Result,
    keep,
    journal,
    first: testJob(),
    newId: () => `${broken ? 'late' : 'job'}-${++ids}`,
  });
  const write = (name: string) => {
    session.draft.getState().write(['name'], name);
    session.draft.getState().leave();
  };
  /** Writes a name that is kept; nothing is after it. */
  const keptThenDown = async (name: string) => {
    write(name);
    await expect.poll(() => session.state.getState().keeping).toBe('kept');
    down.now = true;
  };
  const names = async () => (await session.shelf.list()).map(({ name }) => name).sort();
  const idOf = async (name: string) => (await session.shelf.list()).find((job) => job.name === name)?.id ?? '';
  return { ...session, down, store, write, keptThenDown, names, idOf };
}

it('lists what was put down unwritten, and opens it with what was typed and its steps of undo', async () => {
  const { write, names, idOf, openJob, openText, shelf, draft, state, keptThenDown } = await unwritable();
  await keptThenDown('Kept before');
  write('Typed since');
  await openJob(blankJob());
  write('Never written');
  openText('given.json', jobText({ ...testJob(), name: 'From a file' }));
  await expect.poll(() => state.getState().unkept).toEqual(['Typed since', 'Never written']);
  expect(await names()).toEqual(['From a file', 'Never written', 'Typed since']);

  expect(await shelf.open(await idOf('Typed since'))).toEqual({ ok: true });
  expect(draft.getState().draft.job.name).toBe('Typed since');
  draft.getState().undo();
  expect(draft.getState().draft.job.name).toBe('Kept before');
  draft.getState().redo();
  expect(await shelf.open(await idOf('Never written'))).toEqual({ ok: true });
  expect(draft.getState().draft.job.name).toBe('Never written');
  expect(state.getState().trouble).toBe('failed');
});

it('saves all in a file as they stand, not as storage has them', async () => {
  const { write, idOf, openJob, shelf, keptThenDown } = await unwritable();
  await keptThenDown('Kept before');
  write('Typed since');
  await openJob(blankJob());
  write('Never written');
  const read = await shelf.read([await idOf('Typed since'), await idOf('Never written')]);
  expect(read.map(({ draft }) => draft.job.name)).toEqual(['Typed since', 'Never written']);
});

it('refuses to delete or rename what is not written, says why, and leaves the job in hand', async () => {
  const { write, names, idOf, openJob, shelf, draft, keptThenDown } = await unwritable();
  write('Settled');
  await openJob(testJob());
  await keptThenDown('In hand');
  // All of it is kept, but its deletion cannot be.
  const refused = await shelf.remove(draft.getState().draft.id);
  expect(refused).toEqual({ ok: false, fault: expect.stringMatching(/^The browser.*The jobs are as they were\.$/) });
  expect(draft.getState().draft.job.name).toBe('In hand');

  write('In hand, changed');
  const id = draft.getState().draft.id;
  expect(await shelf.remove(id)).toEqual({ ok: false, fault: expect.stringContaining('are not kept yet') });
  expect(draft.getState().draft.id).toBe(id);
  await openJob(blankJob());
  expect(await shelf.rename(id, 'Other')).toEqual({ ok: false, fault: expect.stringContaining('are not kept yet') });
  expect(await shelf.remove(id)).toEqual({ ok: false, fault: expect.stringContaining('are not kept yet') });
  expect(await names()).toContain('In hand, changed');
  expect(await shelf.remove(await idOf('Settled'))).toMatchObject({ ok: false });
});

it('writes all of it once storage takes it again, and no job that nobody changed', async () => {
  const { down, store, write, openJob, shelf, state, keptThenDown } = await unwritable();
  await keptThenDown('Kept before');
  write('Typed since');
  await openJob({ ...testJob(), name: 'Only looked at' });
  await openJob(blankJob());
  write('Never written');
  down.now = false;
  await shelf.list();
  await expect.poll(() => state.getState().unkept, { timeout: 10_000 }).toEqual([]);
  await expect.poll(() => state.getState().trouble, { timeout: 10_000 }).toBeNull();
  const kept = (await store.jobs()).map(({ draft }) => (draft as { job: { name: string } }).job.name);
  expect(kept.sort()).toEqual(['Never written', 'Typed since']);
});

it('does not take a demo for untouched that was changed while nothing could be written', async () => {
  const { down, write, names, idOf, openJob, shelf, state, draft } = await unwritable();
  await openJob({ ...testJob(), name: 'Demo' });
  await expect.poll(() => state.getState().keeping).toBe('kept');
  down.now = true;
  write('Mine by now');
  await openJob(blankJob());
  await shelf.open(await idOf('Mine by now'));
  down.now = false;
  // Written as it is put down; what storage knew as an untouched demo would be removed.
  await openJob(blankJob());
  await expect.poll(() => state.getState().trouble).toBeNull();
  expect(await names()).toContain('Mine by now');
  await shelf.open(await idOf('Mine by now'));
  expect(draft.getState().draft.job.name).toBe('Mine by now');
});

it('lists and opens on the next visit what a closed page could only note', async () => {
  const notes = new Map<string, KeptJob>();
  const first = await unwritable({ journal: journalIn(notes) });
  first.down.now = true;
  await first.openJob(blankJob());
  first.write('Only noted');
  await first.openJob(testJob());
  const next = await unwritable({ journal: journalIn(new Map(notes)), store: first.store }, true);
  expect(await next.names()).toContain('Only noted');
  expect(await next.shelf.open(await next.idOf('Only noted'))).toEqual({ ok: true });
  expect(next.draft.getState().draft.job.name).toBe('Only noted');
  next.down.now = false;
  next.write('Only noted, and more');
  await expect.poll(() => next.state.getState().keeping, { timeout: 10_000 }).toBe('kept');
  expect((await first.store.jobs()).map(({ draft }) => (draft as { job: { name: string } }).job.name)).toContain(
    'Only noted, and more',
  );
});

it('knows whether the page alone has what was typed', async () => {
  const noted = await unwritable();
  noted.down.now = true;
  noted.write('Typed');
  expect(noted.wouldLose()).toBe(false);
  const { down, write, wouldLose, openJob, state } = await unwritable({ journal: noJournal });
  await expect.poll(() => state.getState().keeping).toBe('kept');
  expect(wouldLose()).toBe(false);
  down.now = true;
  write('Typed');
  await openJob(blankJob());
  expect(wouldLose()).toBe(true);
  down.now = false;
  await expect.poll(() => wouldLose(), { timeout: 10_000 }).toBe(false);
});

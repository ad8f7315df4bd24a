import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { type Job, type Result, solve } from '../../../src/core';
import { browserKeep, fieldKey, jobText, type Keep, memoryKeep, openSession } from '../../../src/job';
import { testJob } from './testJob';

let databases = 0;
const freshKeep = () => browserKeep(`test-${++databases}`);
const blocked = () => Promise.reject(new Error('blocked'));
const noKeep: Keep = { ...memoryKeep(), current: blocked, put: blocked, makeCurrent: blocked };
const solved = async (job: Job) => ({ name: job.name, readings: job.readings.length }) as unknown as Result;
const open = async (keep: Keep | Promise<Keep> = freshKeep(), work: (job: Job) => Promise<Result> = solved) =>
  openSession({ solve: work, keep: await keep, first: testJob() });
/** A session that has worked out its first job, and every job that it asked to be worked out. */
async function openRecorded() {
  const asked: Job[] = [];
  const session = await open(freshKeep(), async (job) => {
    asked.push(job);
    return solved(job);
  });
  await expect.poll(() => session.state.getState().working).toBe(false);
  return { ...session, asked };
}

describe('the result', () => {
  it('follows the draft', async () => {
    const { draft, state } = await open();
    await expect.poll(() => state.getState().result).toEqual({ name: 'Test alcove', readings: 3 });
    draft.getState().remove('readings', 'r1');
    await expect.poll(() => state.getState().result).toEqual({ name: 'Test alcove', readings: 2 });
    await expect.poll(() => state.getState().working).toBe(false);
  });

  it('is asked for once per change of what is understood', async () => {
    const { asked, draft, state } = await openRecorded();
    draft.getState().type(['fit', 'top'], 'length', 'nonsense');
    draft.getState().leave();
    await expect.poll(() => state.getState().working).toBe(false);
    expect(asked).toHaveLength(1);
  });

  it('is not asked for again where it follows from the same', async () => {
    const { asked, draft, state } = await openRecorded();
    const { result } = state.getState();
    draft.getState().write(['name'], 'Another name');
    await expect.poll(() => state.getState().solved?.name).toBe('Another name');
    expect(state.getState()).toMatchObject({ working: false, failure: null });
    expect(state.getState().result).toBe(result);
    expect(asked).toHaveLength(1);
    draft.getState().remove('readings', 'r1');
    await expect.poll(() => state.getState().result).toEqual({ name: 'Another name', readings: 2 });
    expect(asked).toHaveLength(2);
  });

  it('tells when a job cannot be worked out, and recovers', async () => {
    const { draft, state } = await open(freshKeep(), async (job) => {
      if (job.readings.length < 3) throw new Error('too few');
      return solved(job);
    });
    await expect.poll(() => state.getState().result).not.toBeNull();
    draft.getState().remove('readings', 'r1');
    await expect.poll(() => state.getState().failure).toMatch(/too few/);
    expect(state.getState().result).toEqual({ name: 'Test alcove', readings: 3 });
    draft.getState().undo();
    await expect.poll(() => state.getState().failure).toBeNull();
  });

  it('is worked out again when asked, as the job stands by then', async () => {
    let down = true;
    const { state, workOutAgain } = await open(freshKeep(), async (job) => {
      if (down) throw new Error('the worker stopped');
      return solved(job);
    });
    await expect.poll(() => state.getState().unsolved).not.toBeNull();
    workOutAgain();
    await expect.poll(() => state.getState().working).toBe(false);
    expect(state.getState().unsolved).not.toBeNull();
    down = false;
    workOutAgain();
    await expect.poll(() => state.getState().result).toEqual({ name: 'Test alcove', readings: 3 });
    expect(state.getState()).toMatchObject({ failure: null, unsolved: null, working: false });
  });
});

describe('keeping', () => {
  it('brings everything back on the next visit, unread text too', async () => {
    const keep = await freshKeep();
    const first = await open(keep);
    first.draft.getState().type(['readings', 'r1', 'value'], 'length', '29 3/');
    first.draft.getState().leave();
    first.draft.getState().addReading('angle');
    await expect.poll(() => first.state.getState().keeping).toBe('kept');
    const second = await open(keep);
    expect(second.draft.getState().draft).toEqual(first.draft.getState().draft);
    expect(second.draft.getState().draft.typed[fieldKey(['readings', 'r1', 'value'])]).toBe('29 3/');
    expect(second.state.getState().setAside.map(({ id }) => id)).toEqual(['r1', 'r4']);
  });

  it('makes an opened job the current one, and keeps the earlier one beside it', async () => {
    const keep = await freshKeep();
    const { draft, state, openJob } = await open(keep);
    draft.getState().write(['name'], 'Mine');
    const { id } = draft.getState().draft;
    await openJob({ ...testJob(), name: 'Other' });
    await expect.poll(() => state.getState().keeping).toBe('kept');
    expect((await keep.current())?.draft).toMatchObject({ job: { name: 'Other' } });
    draft.getState().undo();
    expect(draft.getState().draft.job.name).toBe('Other');
    expect((await keep.job(id))?.draft).toMatchObject({ job: { name: 'Mine' } });
  });

  it('gives a job back as it was put down, with its steps of undo and no copy of it', async () => {
    const { draft, state, openJob, shelf } = await open();
    draft.getState().write(['name'], 'Mine');
    const mine = draft.getState().draft;
    await openJob({ ...testJob(), name: 'Other' });
    await expect.poll(() => state.getState().keeping).toBe('kept');
    expect(await shelf.open(mine.id)).toEqual({ ok: true });
    expect(draft.getState().draft).toBe(mine);
    draft.getState().undo();
    expect(draft.getState().draft.job.name).toBe('Test alcove');
    expect(draft.getState().draft.job.readings).toBe(mine.job.readings);
  });

  it('gives a job as it is kept where it was changed since it was put down', async () => {
    const keep = await freshKeep();
    const { draft, state, openJob, shelf } = await open(keep);
    draft.getState().write(['name'], 'Mine');
    const { id } = draft.getState().draft;
    await openJob({ ...testJob(), name: 'Other' });
    await expect.poll(() => state.getState().keeping).toBe('kept');
    expect(await shelf.rename(id, 'Renamed')).toEqual({ ok: true });
    expect(await shelf.open(id)).toEqual({ ok: true });
    expect(draft.getState().draft.job.name).toBe('Renamed');
    draft.getState().undo();
    expect(draft.getState().draft.job.name).toBe('Renamed');
  });

  it('does not collect demos in which nothing was changed', async () => {
    const keep = await freshKeep();
    const { openJob } = await open(keep);
    await openJob({ ...testJob(), name: 'Second' });
    await openJob({ ...testJob(), name: 'Third' });
    expect((await keep.jobs()).map(({ draft }) => (draft as { job: Job }).job.name)).toEqual(['Third']);
  });

  it('keeps a job that somebody gave, though nothing was changed in it', async () => {
    const keep = await freshKeep();
    const { keepJob, openJob, shelf } = await open(keep);
    await keepJob({ ...testJob(), name: 'Came in a link' });
    await openJob({ ...testJob(), name: 'A demo' });
    const listed = (await shelf.list()).map(({ name, untouched }) => [name, untouched]);
    expect(new Map(listed as [string, boolean][])).toEqual(
      new Map([
        ['Came in a link', false],
        ['A demo', true],
      ]),
    );
  });

  it('goes on without storage and says so', async () => {
    const { draft, state } = await open(noKeep);
    expect(state.getState().keeping).toBe('not-kept');
    draft.getState().write(['name'], 'Still here');
    await expect.poll(() => state.getState().solved).toMatchObject({ name: 'Still here' });
    expect(state.getState().keeping).toBe('not-kept');
  });

  it('leaves a record that it does not understand as it is', async () => {
    const keep = await freshKeep();
    const strange = { id: 'old', draft: { id: 'old', job: { readings: 'many' } }, changedAt: 0, revision: 0 };
    await keep.put(strange);
    await keep.makeCurrent('old');
    const { draft, state } = await open(keep);
    expect(draft.getState().draft.job.name).toBe('Test alcove');
    expect(state.getState().notice).toMatch(/another version/);
    expect(await keep.job('old')).toEqual({ ...strange, revision: 1 });
  });
});

describe('job files', () => {
  it('leaves the job in hand as it is and lists every fault of a bad file', async () => {
    const { draft, state, openText } = await open();
    const before = draft.getState().draft;
    const bad = { ...testJob(), colour: 'blue', readings: [{ ...testJob().readings[0], value: 'long' }] };
    openText('bad.json', JSON.stringify(bad));
    expect(draft.getState().draft).toBe(before);
    expect(state.getState().badFile?.name).toBe('bad.json');
    expect(
      state
        .getState()
        .badFile?.faults.map(({ path }) => path)
        .sort(),
    ).toEqual(['colour', 'readings[0].value']);
    openText('text.json', 'not json');
    expect(state.getState().badFile?.faults).toHaveLength(1);
  });

  it('opens a saved job to the same result', async () => {
    const { draft, state, openText } = await open(freshKeep(), async (job) => solve(job));
    await expect.poll(() => state.getState().result).not.toBeNull();
    const before = state.getState();
    const text = jobText(before.solved!);
    draft.getState().remove('readings', 'r2');
    await expect.poll(() => state.getState().result).not.toEqual(before.result);
    openText('saved.json', text);
    await expect.poll(() => state.getState().result).toEqual(before.result);
    expect(state.getState().badFile).toBeNull();
  });
});

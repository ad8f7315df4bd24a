import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { browserKeep, type KeptPhoto, openKeep, openSession } from '../../../../src/job';
import { databaseVersion } from '../../../../src/job/keep/database';
import { testJob } from '../testJob';
import keptByFirstVersion from './kept-by-first-version.json';
import keptBySecondVersion from './kept-by-second-version.json';

const name = 'kept';
const job = (id: string, revision = 0) => ({ id, draft: { words: id }, changedAt: 1, revision });
const photo = (of: string, id: string): KeptPhoto => ({
  job: of,
  id,
  bytes: new Uint8Array([1, 2, 3]),
  type: 'image/jpeg',
  width: 4,
  height: 3,
  takenAt: 5,
});

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe('jobs', () => {
  it('are written only by who has seen the last revision', async () => {
    const keep = await browserKeep(name);
    expect(await keep.put(job('a'))).toBe(1);
    expect(await keep.put(job('a', 1))).toBe(2);
    expect(await keep.put({ ...job('a', 1), draft: 'late' })).toBeNull();
    expect(await keep.put({ ...job('a'), draft: 'another new one' })).toBeNull();
    expect(await keep.job('a')).toEqual(job('a', 2));
    expect(await keep.put(job('never kept', 3))).toBeNull();
  });

  it('come in all or not at all', async () => {
    const keep = await browserKeep(name);
    await keep.put(job('there'));
    await expect(keep.bringIn([job('new'), job('there')], [photo('new', 'p')])).rejects.toThrow();
    expect((await keep.jobs()).map(({ id }) => id)).toEqual(['there']);
    expect(await keep.photos('new')).toEqual([]);
  });

  it('that are deleted are not opened, come back whole, and go for good with their photos', async () => {
    const keep = await browserKeep(name);
    await keep.put(job('a'));
    await keep.putPhoto(photo('a', 'p'));
    await keep.putPhoto(photo('b', 'p'));
    await keep.makeCurrent('a');
    await keep.markDeleted('a', 77);
    expect(await keep.current()).toBeUndefined();
    expect(await keep.job('a')).toMatchObject({ deletedAt: 77 });
    await keep.markDeleted('a', undefined);
    expect(await keep.current()).toEqual(job('a', 3));
    expect(await keep.photos('a')).toEqual([photo('a', 'p')]);
    await keep.removeForGood('a');
    expect(await keep.job('a')).toBeUndefined();
    expect(await keep.photos('a')).toEqual([]);
    expect(await keep.photo('b', 'p')).toEqual(photo('b', 'p'));
  });
});

describe('a database', () => {
  it('of the first version opens with the job and the unread text that it held', async () => {
    const old = await openDB(name, 1, {
      upgrade: (db) => {
        db.createObjectStore('jobs', { keyPath: 'id' });
        db.createObjectStore('pointers');
      },
    });
    await old.put('jobs', keptByFirstVersion);
    await old.put('pointers', keptByFirstVersion.id, 'current');
    old.close();
    const keep = await browserKeep(name);
    const { draft, state } = await openSession({ solve: () => new Promise(() => undefined), keep, first: testJob() });
    expect(draft.getState().draft).toMatchObject({
      id: keptByFirstVersion.id,
      typed: keptByFirstVersion.draft.typed,
      job: { name: keptByFirstVersion.draft.job.name, readings: keptByFirstVersion.draft.job.readings },
    });
    draft.getState().write(['name'], 'Carried over');
    await expect.poll(() => state.getState().keeping).toBe('kept');
    expect(await keep.job(keptByFirstVersion.id)).toMatchObject({
      revision: 1,
      draft: { job: { name: 'Carried over' } },
    });
  });

  it('of the second version opens with its job, unread text and photos, and then keeps scans too', async () => {
    const { job: kept, photos } = keptBySecondVersion;
    const written = photos.map((each) => ({ ...each, bytes: Uint8Array.from(Buffer.from(each.bytes, 'base64')) }));
    const old = await openDB(name, 2, {
      upgrade: (db) => {
        db.createObjectStore('jobs', { keyPath: 'id' });
        db.createObjectStore('pointers');
        db.createObjectStore('photos', { keyPath: ['job', 'id'] }).createIndex('job', 'job');
      },
    });
    await old.put('jobs', kept);
    await old.put('pointers', kept.id, 'current');
    for (const each of written) await old.put('photos', each);
    old.close();
    const keep = await browserKeep(name);
    const { draft, state } = await openSession({ solve: () => new Promise(() => undefined), keep, first: testJob() });
    expect(draft.getState().draft).toMatchObject({
      id: kept.id,
      typed: kept.draft.typed,
      job: { name: kept.draft.job.name, readings: kept.draft.job.readings, scans: [] },
    });
    expect(await keep.photos(kept.id)).toEqual(written);
    draft.getState().write(['name'], 'Carried over');
    await expect.poll(() => state.getState().keeping).toBe('kept');
    expect(await keep.job(kept.id)).toMatchObject({
      revision: kept.revision + 1,
      draft: { job: { name: 'Carried over' } },
    });
    const scan = {
      job: kept.id,
      id: 'scan1',
      positions: new Float32Array([1, 2, 3]),
      labels: new Uint8Array([3]),
      keptAt: 9,
    };
    await keep.putScan(scan);
    expect(await keep.scan(kept.id, 'scan1')).toEqual(scan);
    expect(await keep.scanIds(kept.id)).toEqual(['scan1']);
  });

  it('of a newer version is left alone', async () => {
    const newer = await openDB(name, databaseVersion + 1, { upgrade: (db) => void db.createObjectStore('future') });
    newer.close();
    const { keep, trouble } = await openKeep(() => browserKeep(name));
    expect(trouble).toBe('newer');
    expect(await keep.put(job('a'))).toBe(1);
    expect([...(await openDB(name)).objectStoreNames]).toEqual(['future']);
  });

  it('makes way for a newer version that another page brings', async () => {
    const keep = await browserKeep(name);
    const newer = await openDB(name, databaseVersion + 1);
    await expect(keep.put(job('a'))).rejects.toMatchObject({ trouble: 'newer' });
    newer.close();
  });

  it('that is deleted under the page is made anew at the next call', async () => {
    const keep = await browserKeep(name);
    await keep.put(job('a'));
    await deleteDB(name);
    expect(await keep.jobs()).toEqual([]);
    expect(await keep.put(job('a', 1))).toBeNull();
    expect(await keep.put(job('a'))).toBe(1);
  });

  it('remembers texts beside the jobs', async () => {
    const keep = await browserKeep(name);
    expect(await keep.recall('what')).toBeUndefined();
    await keep.remember('what', 'this');
    expect(await keep.recall('what')).toBe('this');
  });

  it('that an old page holds open is not waited for', async () => {
    const old = await openDB(name, 1, { upgrade: (db) => void db.createObjectStore('jobs', { keyPath: 'id' }) });
    expect((await openKeep(() => browserKeep(name))).trouble).toBe('held');
    old.close();
  });
});

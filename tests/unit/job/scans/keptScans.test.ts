import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { browserKeep, type Keep, memoryKeep, StorageFault, scansIn } from '../../../../src/job';

const scan = () => ({ positions: new Float32Array([1, 2, 3, 4, 5, 6]), labels: Uint8Array.of(3, 7) });
const job = { id: 'a', draft: {}, changedAt: 1, revision: 0 };
const room = async () => ({ quota: 1000, usage: 900 });

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe.each<[string, () => Promise<Keep>]>([
  ['in the browser', () => browserKeep('kept')],
  ['in memory', async () => memoryKeep()],
])('points of a scan, %s', (_, open) => {
  it('are kept beside their job and go for good with it', async () => {
    const keep = await open();
    const scans = scansIn(keep, room);
    await keep.put(job);
    expect(await scans.keep('a', 'scan1', scan())).toEqual({ ok: true });
    expect(await scans.keep('b', 'scan1', scan())).toEqual({ ok: true });
    expect(await scans.read('a', 'scan1')).toEqual(scan());
    expect(await scans.ids('a')).toEqual(['scan1']);
    await keep.removeForGood('a');
    expect(await scans.read('a', 'scan1')).toBeNull();
    expect(await scans.ids('b')).toEqual(['scan1']);
    await scans.remove('b', 'scan1');
    expect(await scans.ids('b')).toEqual([]);
  });
});

it('are not kept where they would take most of the room, and it is said how much they need', async () => {
  const scans = scansIn(memoryKeep(), async () => ({ quota: 1000, usage: 960 }));
  expect(await scans.keep('a', 'scan1', scan())).toEqual({
    ok: false,
    why: 'There is no room here for its points (1 MB).',
  });
  expect(await scans.ids('a')).toEqual([]);
});

it('are missed without harm where storage fails', async () => {
  const fail = () => Promise.reject(new StorageFault('blocked'));
  const scans = scansIn({ ...memoryKeep(), putScan: fail, scan: fail, scanIds: fail }, room);
  expect(await scans.keep('a', 'scan1', scan())).toMatchObject({ ok: false, why: expect.stringMatching(/no storage/) });
  expect(await scans.read('a', 'scan1')).toBeNull();
  expect(await scans.ids('a')).toEqual([]);
});

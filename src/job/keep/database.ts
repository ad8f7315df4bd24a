import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Keep, KeptJob, KeptPhoto, KeptScan } from './keep';
import { StorageFault } from './storage-fault';
import { type TabMemory, tabMemory } from './tab-memory';

interface Schema extends DBSchema {
  jobs: { key: string; value: KeptJob };
  /** `current`: the id of the job in hand; else what `remember` was told */
  pointers: { key: string; value: string };
  photos: { key: [job: string, id: string]; value: KeptPhoto; indexes: { job: string } };
  scans: { key: [job: string, id: string]; value: KeptScan; indexes: { job: string } };
}

type Database = IDBPDatabase<Schema>;

export const databaseVersion = 3;

/**
 * Opens the browser's own database, made on the first visit and brought up to date on a later one. Where the browser
 * closes it, as when its storage is cleared, the next call opens it again.
 * @returns rejects with a `StorageFault` where that cannot be had
 */
export async function browserKeep(name = 'nookwright', tab: TabMemory = tabMemory()): Promise<Keep> {
  let opened: Promise<Database> | null = null;
  const connect = () => {
    opened ??= open(name, () => {
      opened = null;
    });
    return opened;
  };
  await connect();
  return keepIn(connect, tab);
}

/** @param closed the connection is of no use any more, or there was none to be had */
function open(name: string, closed: () => void): Promise<Database> {
  return new Promise((resolve, reject) => {
    const failed = (error: unknown) => {
      closed();
      reject(StorageFault.of(error));
    };
    const opened = openDB<Schema>(name, databaseVersion, {
      upgrade: (db, from) => {
        if (from < 1) {
          db.createObjectStore('jobs', { keyPath: 'id' });
          db.createObjectStore('pointers');
        }
        if (from < 2) db.createObjectStore('photos', { keyPath: ['job', 'id'] }).createIndex('job', 'job');
        if (from < 3) db.createObjectStore('scans', { keyPath: ['job', 'id'] }).createIndex('job', 'job');
      },
      blocked: () => {
        opened.then((db) => db.close()).catch(() => undefined);
        failed(new StorageFault('held'));
      },
      // A newer version of the app, or who clears the storage, waits for this connection to close.
      blocking: (_from, _to, event) => {
        closed();
        (event.target as IDBDatabase).close();
      },
      terminated: closed,
    });
    opened.then(resolve, failed);
  });
}

function keepIn(connect: () => Promise<Database>, tab: TabMemory): Keep {
  const job = async (id: string): Promise<KeptJob | undefined> => upToDate(await (await connect()).get('jobs', id));
  const changingJobs = async () => {
    const { store, done } = (await connect()).transaction('jobs', 'readwrite');
    // What fails is told by the request itself, first.
    done.catch(() => undefined);
    return { store, done };
  };
  return {
    current: async () => {
      const db = await connect();
      const own = tab.read();
      const mine = own === null ? undefined : await job(own);
      if (mine && mine.deletedAt === undefined) return mine;
      const last = await db.get('pointers', 'current');
      const record = last === undefined ? undefined : await job(last);
      return record?.deletedAt === undefined ? record : undefined;
    },
    job,
    jobs: async () => (await (await connect()).getAll('jobs')).map((record) => upToDate(record)!),
    put: async (record) => {
      const { store, done } = await changingJobs();
      const before = upToDate(await store.get(record.id));
      const seen = before ? before.revision === record.revision : record.revision === 0;
      const revision = record.revision + 1;
      if (seen) await store.put({ ...record, revision });
      await done;
      return seen ? revision : null;
    },
    makeCurrent: async (id) => {
      tab.write(id);
      await (await connect()).put('pointers', id, 'current');
    },
    bringIn: async (jobs, photos) => {
      const both = (await connect()).transaction(['jobs', 'photos'], 'readwrite');
      await Promise.all([
        ...jobs.map((record) => both.objectStore('jobs').add(record)),
        ...photos.map((photo) => both.objectStore('photos').add(photo)),
        both.done,
      ]);
    },
    markDeleted: async (id, deletedAt) => {
      const { store, done } = await changingJobs();
      const record = upToDate(await store.get(id));
      if (record) {
        const { deletedAt: _, ...rest } = record;
        await store.put({ ...rest, revision: record.revision + 1, ...(deletedAt !== undefined && { deletedAt }) });
      }
      await done;
    },
    removeForGood: async (id) => {
      const all = (await connect()).transaction(['jobs', 'photos', 'scans'], 'readwrite');
      const [photos, scans] = await Promise.all(
        (['photos', 'scans'] as const).map((name) => all.objectStore(name).index('job').getAllKeys(id)),
      );
      await Promise.all([
        ...photos!.map((key) => all.objectStore('photos').delete(key)),
        ...scans!.map((key) => all.objectStore('scans').delete(key)),
        all.objectStore('jobs').delete(id),
        all.done,
      ]);
    },
    putPhoto: async (photo) => void (await (await connect()).put('photos', photo)),
    photo: async (of, id) => (await connect()).get('photos', [of, id]),
    photos: async (of) => (await connect()).getAllFromIndex('photos', 'job', of),
    removePhoto: async (of, id) => (await connect()).delete('photos', [of, id]),
    putScan: async (scan) => void (await (await connect()).put('scans', scan)),
    scan: async (of, id) => (await connect()).get('scans', [of, id]),
    scanIds: async (of) => (await (await connect()).getAllKeysFromIndex('scans', 'job', of)).map(([, id]) => id),
    removeScan: async (of, id) => (await connect()).delete('scans', [of, id]),
    remember: async (what, text) => void (await (await connect()).put('pointers', text, what)),
    recall: async (what) => (await connect()).get('pointers', what),
  };
}

/** Records of the first version count no revisions. */
const upToDate = (record: KeptJob | undefined): KeptJob | undefined =>
  record && { ...record, revision: record.revision ?? 0 };

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Keep, KeptJob, KeptPhoto, KeptScan } from './keep';
import { StorageFault } from './storage-fault';
import { type TabMemory, tabMemory } from './tab-memory';

interface Schema extends DBSchema {
  jobs: { key: string; value: KeptJob };
  /** `current`: the id of the job in hand */
  pointers: { key: string; value: string };
  photos: { key: [job: string, id: string]; value: KeptPhoto; indexes: { job: string } };
  scans: { key: [job: string, id: string]; value: KeptScan; indexes: { job: string } };
}

export const databaseVersion = 3;

/**
 * Opens the browser's own database, made on the first visit and brought up to date on a later one.
 * @returns rejects with a `StorageFault` where that cannot be had
 */
export async function browserKeep(name = 'nookwright', tab: TabMemory = tabMemory()): Promise<Keep> {
  return keepIn(await open(name), tab);
}

function open(name: string): Promise<IDBPDatabase<Schema>> {
  return new Promise((resolve, reject) => {
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
        reject(new StorageFault('held'));
      },
      // A newer version of the app waits for this connection to close.
      blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
    });
    opened.then(resolve, (error) => reject(StorageFault.of(error)));
  });
}

function keepIn(db: IDBPDatabase<Schema>, tab: TabMemory): Keep {
  const job = async (id: string): Promise<KeptJob | undefined> => upToDate(await db.get('jobs', id));
  return {
    current: async () => {
      const own = tab.read();
      const mine = own === null ? undefined : await job(own);
      if (mine && mine.deletedAt === undefined) return mine;
      const last = await db.get('pointers', 'current');
      const record = last === undefined ? undefined : await job(last);
      return record?.deletedAt === undefined ? record : undefined;
    },
    job,
    jobs: async () => (await db.getAll('jobs')).map((record) => upToDate(record)!),
    put: async (record) => {
      const { store, done } = db.transaction('jobs', 'readwrite');
      const before = upToDate(await store.get(record.id));
      const seen = before ? before.revision === record.revision : record.revision === 0;
      const revision = record.revision + 1;
      if (seen) await store.put({ ...record, revision });
      await done;
      return seen ? revision : null;
    },
    makeCurrent: async (id) => {
      tab.write(id);
      await db.put('pointers', id, 'current');
    },
    bringIn: async (jobs, photos) => {
      const both = db.transaction(['jobs', 'photos'], 'readwrite');
      await Promise.all([
        ...jobs.map((record) => both.objectStore('jobs').add(record)),
        ...photos.map((photo) => both.objectStore('photos').add(photo)),
        both.done,
      ]);
    },
    markDeleted: async (id, deletedAt) => {
      const { store, done } = db.transaction('jobs', 'readwrite');
      const record = upToDate(await store.get(id));
      if (record) {
        const { deletedAt: _, ...rest } = record;
        await store.put({ ...rest, revision: record.revision + 1, ...(deletedAt !== undefined && { deletedAt }) });
      }
      await done;
    },
    removeForGood: async (id) => {
      const all = db.transaction(['jobs', 'photos', 'scans'], 'readwrite');
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
    putPhoto: async (photo) => void (await db.put('photos', photo)),
    photo: (of, id) => db.get('photos', [of, id]),
    photos: (of) => db.getAllFromIndex('photos', 'job', of),
    removePhoto: (of, id) => db.delete('photos', [of, id]),
    putScan: async (scan) => void (await db.put('scans', scan)),
    scan: (of, id) => db.get('scans', [of, id]),
    scanIds: async (of) => (await db.getAllKeysFromIndex('scans', 'job', of)).map(([, id]) => id),
    removeScan: (of, id) => db.delete('scans', [of, id]),
  };
}

/** Records of the first version count no revisions. */
const upToDate = (record: KeptJob | undefined): KeptJob | undefined =>
  record && { ...record, revision: record.revision ?? 0 };

import { type DBSchema, openDB } from 'idb';

/** A job as kept between visits. `draft` is checked when it is read: an older version may have written it. */
export interface KeptJob {
  id: string;
  draft: unknown;
  changedAt: number;
}

interface Schema extends DBSchema {
  jobs: { key: string; value: KeptJob };
  /** `current`: the id of the job in hand */
  pointers: { key: string; value: string };
}

/** Where jobs are kept between visits. Every call may reject: storage can be blocked or full. */
export interface Keep {
  current(): Promise<KeptJob | undefined>;
  /** Keeps the job and makes it the current one. */
  put(job: KeptJob): Promise<void>;
}

/** Opens the browser's own database (made on the first visit). */
export function browserKeep(name = 'nookwright'): Keep {
  const database = openDB<Schema>(name, 1, {
    upgrade: (db) => {
      db.createObjectStore('jobs', { keyPath: 'id' });
      db.createObjectStore('pointers');
    },
  });
  database.catch(() => undefined);
  return {
    current: async () => {
      const db = await database;
      const id = await db.get('pointers', 'current');
      return id === undefined ? undefined : db.get('jobs', id);
    },
    put: async (job) => {
      const both = (await database).transaction(['jobs', 'pointers'], 'readwrite');
      await Promise.all([
        both.objectStore('jobs').put(job),
        both.objectStore('pointers').put(job.id, 'current'),
        both.done,
      ]);
    },
  };
}

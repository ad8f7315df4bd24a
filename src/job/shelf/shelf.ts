import type { Job } from '../../core';
import { type Draft, draftOf } from '../draft';
import type { DraftStore } from '../draft-store';
import type { InHand } from '../in-hand';
import { type Keep, type KeptJob, type KeptPhoto, StorageFault, type StorageTrouble } from '../keep';
import { keptDraft } from '../kept-draft';
import type { Tabs } from '../tabs';
import { type JobSummary, summaryOf } from './summary';
import { countOn, waitingFrom } from './waiting';

/** `fault`: a sentence that says what stood in the way; the jobs are then as they were. */
export type Done = { ok: true } | { ok: false; fault: string };

/** A job with its photos, as it goes into a file of jobs and comes out of one. */
export interface ShelvedJob {
  draft: Draft;
  changedAt: number;
  photos: KeptPhoto[];
}

/** All jobs that this browser keeps. */
export interface Shelf {
  list(): Promise<JobSummary[]>;
  open(id: string): Promise<Done>;
  rename(id: string, name: string): Promise<Done>;
  copy(id: string): Promise<Done>;
  /** Puts a job aside, to be brought back or removed for good. */
  remove(id: string): Promise<Done>;
  bringBack(id: string): Promise<Done>;
  removeForGood(id: string): Promise<Done>;
  /** Once at each start: removes for good what was deleted `deletedFor` days ago, by a count that no set clock misleads. */
  sweep(now?: number): Promise<void>;
  read(ids: readonly string[]): Promise<ShelvedJob[]>;
  /** Keeps jobs that come from a file, each under an identity of its own. */
  bringIn(jobs: readonly ShelvedJob[]): Promise<Done>;
}

export interface ShelfParts {
  keep: Keep;
  tabs: Tabs;
  inHand: InHand;
  draft: DraftStore;
  first: Job;
  newId: () => string;
  setState(part: { notice?: string | null; badFile?: null }): void;
}

/** Deleted jobs wait at least so long, days. */
export const deletedFor = 30;
/** The count of their waiting is kept under this name. */
const waitingName = 'deleted-jobs';

const troubleWords: Record<StorageTrouble, string> = {
  blocked: 'This browser gives no storage.',
  full: 'There is no room left on this device.',
  newer: 'A newer version keeps the jobs now; load the page again.',
  held: 'Another page holds the jobs; close it and load this one again.',
  failed: 'The browser’s storage did not answer.',
};

export function shelfOf({ keep, tabs, inHand, draft: store, first, newId, setState }: ShelfParts): Shelf {
  const attempt = async (work: () => Promise<Done | undefined>): Promise<Done> => {
    try {
      await inHand.flush();
      return (await work()) ?? { ok: true };
    } catch (error) {
      return { ok: false, fault: `${troubleWords[StorageFault.of(error).trouble]} The jobs are as they were.` };
    }
  };
  /** A job with what is not written of it yet. */
  const upToDate = (id: string, kept: KeptJob | undefined): KeptJob | undefined => {
    const pending = inHand.pending(id, kept);
    if (!pending) return kept;
    return { ...pending, ...(kept?.deletedAt !== undefined && { deletedAt: kept.deletedAt }) };
  };
  const jobNow = async (id: string) => upToDate(id, await keep.job(id));
  const allNow = async (): Promise<KeptJob[]> => {
    const kept = new Map((await keep.jobs()).map((record) => [record.id, record]));
    const ids = new Set([...kept.keys(), ...inHand.pendingIds()]);
    return [...ids].flatMap((id) => upToDate(id, kept.get(id)) ?? []);
  };
  const gone: Done = { ok: false, fault: 'This job is not kept here any more.' };
  const unknown: Done = {
    ok: false,
    fault: 'This job was kept by another version and cannot be shown here. It stays stored as it is.',
  };
  const unkept: Done = {
    ok: false,
    fault:
      'The last changes of this job are not kept yet: the browser’s storage does not take them. ' +
      'Open it and save it as a job file, or make room on the device, and try again.',
  };
  const busy: Done = { ok: false, fault: 'This job is being edited in another tab. Close it there first.' };
  const open = async (id: string): Promise<Done> => {
    if (id === inHand.id) return { ok: true };
    const record = await jobNow(id);
    if (!record || record.deletedAt !== undefined) return gone;
    const draft = keptDraft(record.draft);
    if (!draft) return unknown;
    setState({ notice: null, badFile: null });
    await inHand.takeKept(draft, record);
    return { ok: true };
  };
  /** Another job comes into hand: the last changed one, or the one of a first visit. */
  const openAnother = async () => {
    const { id: leaving } = inHand;
    const others = (await allNow())
      .filter(({ id, deletedAt }) => id !== leaving && deletedAt === undefined)
      .sort((a, b) => b.changedAt - a.changedAt);
    for (const { id } of others) if (!(await tabs.heldElsewhere(id)) && (await open(id)).ok) return;
    await inHand.takeNew(draftOf(first, newId()), true);
  };
  const photosOf = (ids: readonly string[]) => Promise.all(ids.map((id) => keep.photos(id)));

  return {
    list: async () => (await allNow()).map(summaryOf),
    open: (id) => attempt(() => open(id)),
    rename: (id, name) =>
      attempt(async () => {
        if (id === inHand.id) {
          if (store.getState().locked) return busy;
          store.getState().write(['name'], name);
          store.getState().leave();
          return;
        }
        if (await tabs.heldElsewhere(id)) return busy;
        const record = await keep.job(id);
        if (inHand.pending(id, record)) return unkept;
        if (!record) return gone;
        const draft = keptDraft(record.draft);
        if (!draft) return unknown;
        const { untouched: _, ...rest } = record;
        const renamed: Draft = { ...draft, job: { ...draft.job, name } };
        if ((await keep.put({ ...rest, draft: renamed, changedAt: Date.now() })) === null) return busy;
        tabs.tellWritten(id);
        return;
      }),
    copy: (id) =>
      attempt(async () => {
        const [record, photos] = await Promise.all([jobNow(id), keep.photos(id)]);
        if (!record) return gone;
        const draft = keptDraft(record.draft);
        if (!draft) return unknown;
        const copy = newId();
        const name = `${draft.job.name} (copy)`.slice(0, 200);
        await keep.bringIn(
          [
            {
              id: copy,
              draft: { ...draft, id: copy, job: { ...draft.job, name } },
              changedAt: Date.now(),
              revision: 1,
            },
          ],
          photos.map((photo) => ({ ...photo, job: copy })),
        );
        return;
      }),
    remove: (id) =>
      attempt(async () => {
        if (await tabs.heldElsewhere(id)) return busy;
        const kept = await keep.job(id);
        const pending = inHand.pending(id, kept);
        if (pending && !pending.untouched) return unkept;
        if (!kept && !pending) return gone;
        const wasInHand = id === inHand.id;
        if (wasInHand) await openAnother();
        try {
          await keep.markDeleted(id, Date.now());
        } catch (error) {
          if (wasInHand) await open(id);
          throw error;
        }
        return;
      }),
    bringBack: (id) =>
      attempt(async () => {
        if (!(await keep.job(id))) return gone;
        await keep.markDeleted(id, undefined);
        return;
      }),
    removeForGood: (id) =>
      attempt(async () => {
        await keep.removeForGood(id);
        inHand.forget(id);
        await inHand.flush();
        return;
      }),
    sweep: async (now = Date.now()) => {
      const deleted = (await keep.jobs()).filter(({ deletedAt }) => deletedAt !== undefined).map(({ id }) => id);
      const { waiting, over } = countOn(waitingFrom(await keep.recall(waitingName)), deleted, now, deletedFor);
      for (const id of over) {
        await keep.removeForGood(id);
        inHand.forget(id);
      }
      await keep.remember(waitingName, JSON.stringify(waiting));
    },
    read: async (ids) => {
      await inHand.flush();
      const [records, photos] = await Promise.all([Promise.all(ids.map(jobNow)), photosOf(ids)]);
      return records.flatMap((record, i) => shelved(record, photos[i] ?? []));
    },
    bringIn: (jobs) =>
      attempt(async () => {
        const named = jobs.map(({ draft, changedAt, photos }) => {
          const id = newId();
          return {
            record: { id, draft: { ...draft, id }, changedAt, revision: 1 } satisfies KeptJob,
            photos: photos.map((photo) => ({ ...photo, job: id })),
          };
        });
        await keep.bringIn(
          named.map(({ record }) => record),
          named.flatMap(({ photos }) => photos),
        );
        return;
      }),
  };
}

function shelved(record: KeptJob | undefined, photos: KeptPhoto[]): ShelvedJob[] {
  const draft = record && keptDraft(record.draft);
  return draft ? [{ draft, changedAt: record.changedAt, photos }] : [];
}

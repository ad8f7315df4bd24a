import { askToPersist } from './ask-to-persist';
import { type Draft, draftOf } from './draft';
import type { Steps } from './draft-store';
import type { InHandParts } from './in-hand-parts';
import { JobKeeper } from './job-keeper';
import { standing } from './journal';
import { type KeptJob, StorageFault } from './keep';
import { keptDraft } from './kept-draft';

/** Steps of undo are remembered for so many jobs of a visit. */
const remembered = 8;

/** A job that was in hand before, as it was put down. */
interface PutDown extends Steps {
  draft: Draft;
  /** the one that storage has it with */
  revision: number;
}

/**
 * The job in hand as storage and the other pages see it: who edits it, what of it is kept, and the change from one job
 * to the next. Nothing that was typed is dropped: what cannot be written over the kept job becomes a job of its own.
 */
export class InHand {
  private keeper: JobKeeper;
  private untouched = false;
  /** jobs that were put down before they could be written */
  private readonly unwritten = new Map<string, JobKeeper>();
  private readonly putDown = new Map<string, PutDown>();

  constructor(private readonly parts: InHandParts) {
    this.keeper = this.keeperAt(0);
    const { store, tabs, report } = parts;
    store.subscribe((now, before) => {
      if (now.draft === before.draft || now.draft.id !== before.draft.id || now.locked) return;
      if (this.untouched) this.untouched = false;
      report.keeping('writing');
      this.keeper.request(now.draft);
    });
    tabs.listen({
      written: (job) => {
        report.listed();
        if (job === this.id && store.getState().locked) void this.follow();
      },
      given: (job) => {
        if (job === this.id && store.getState().locked) void this.becomeEditor();
      },
      wanted: async () => {
        this.lost();
        await this.keeper.flush();
      },
    });
  }

  get id(): string {
    return this.parts.store.getState().draft.id;
  }

  /** Starts with a job read from storage. */
  async startWith(draft: Draft, record: KeptJob | null): Promise<void> {
    this.untouched = record?.untouched ?? record === null;
    this.keeper = this.keeperAt(record?.revision ?? 0);
    await this.enter(draft);
    if (!record) this.keeper.request(draft, true);
  }

  /** Takes up a job that storage does not have yet. */
  async takeNew(draft: Draft, untouched: boolean): Promise<void> {
    const leaving = this.leave();
    this.untouched = untouched;
    this.keeper = this.keeperAt(0);
    this.parts.store.getState().take(draft);
    this.keeper.request(draft, untouched);
    await leaving;
    await this.enter(draft);
  }

  /** Takes up a kept job. */
  async takeKept(kept: Draft, record: KeptJob): Promise<void> {
    const leaving = this.leave();
    const left = this.unwritten.get(kept.id);
    this.unwritten.delete(kept.id);
    const pending = left?.pending ?? null;
    this.keeper = left ?? this.keeperAt(record.revision);
    const putDown = this.putDown.get(kept.id);
    const before = putDown?.revision === this.keeper.revision ? putDown : undefined;
    // The steps share what is alike with the draft that they led to. A copy out of storage shares nothing: with every
    // turn to another job and back, undo would hold one more.
    const draft = pending?.draft ?? before?.draft ?? kept;
    // What was typed before it could be written is no untouched demo any more, whatever storage has of it.
    this.untouched = (pending ?? record).untouched ?? false;
    this.parts.store.getState().take(draft, before);
    this.tellUnkept();
    await leaving;
    await this.enter(draft);
  }

  /** Gets the job from the page that edits it. */
  async takeOver(): Promise<void> {
    const { id } = this;
    await this.parts.tabs.takeOver(id, this.lost);
    if (this.id === id) await this.becomeEditor();
  }

  async flush(): Promise<void> {
    await Promise.all([this.keeper, ...this.unwritten.values()].map((keeper) => keeper.flush()));
  }

  /**
   * What is not written yet of a job: on this page, or noted by one that was killed.
   * @param record the job as storage has it
   */
  pending(id: string, record: KeptJob | undefined): KeptJob | null {
    const keeper = id === this.id ? this.keeper : this.unwritten.get(id);
    if (keeper) return keeper.pending;
    const noted = this.parts.journal.read(id);
    if (!noted || !keptDraft(noted.draft) || standing(noted, record) !== 'newer') return null;
    return { ...noted, revision: record?.revision ?? 0 };
  }

  /** Ids of jobs that storage may lack or have as they were before. */
  pendingIds(): string[] {
    return [...new Set([this.id, ...this.unwritten.keys(), ...this.parts.journal.ids()])];
  }

  /** True where something that was typed would be lost with the page. */
  get atRisk(): boolean {
    return [this.keeper, ...this.unwritten.values()].some((keeper) => keeper.atRisk);
  }

  /** Writes what was typed into other jobs on pages that were killed before it was written. */
  async recoverOthers(): Promise<void> {
    const { keep, tabs, journal } = this.parts;
    for (const id of journal.ids()) {
      const noted = journal.read(id);
      if (!noted || id === this.id || (await tabs.heldElsewhere(id))) continue;
      try {
        const record = await keep.job(id);
        const stands = standing(noted, record);
        // Kept apart when the job is opened.
        if (stands === 'apart') continue;
        const done = stands === 'written' || (await keep.put({ ...noted, revision: record?.revision ?? 0 })) !== null;
        if (done) journal.clear(id);
      } catch {
        // It stays noted.
      }
    }
  }

  /** The job is removed for good. */
  forget(id: string): void {
    this.unwritten.get(id)?.drop();
    this.unwritten.delete(id);
    this.tellUnkept();
    this.parts.journal.clear(id);
    this.putDown.delete(id);
    this.parts.report.listed();
  }

  private readonly lost = () => {
    const { store, report } = this.parts;
    store.getState().leave();
    store.getState().lock(true);
    report.elsewhere(true);
  };

  private async enter(draft: Draft): Promise<void> {
    const { keep, tabs, store, report } = this.parts;
    if (this.id !== draft.id) return;
    await keep.makeCurrent(draft.id).catch(() => undefined);
    const mine = await tabs.hold(draft.id, this.lost);
    if (this.id !== draft.id) return;
    store.getState().lock(!mine);
    report.elsewhere(!mine);
    if (mine) await this.recover();
    report.listed();
  }

  private async leave(): Promise<void> {
    const { keep, store, report } = this.parts;
    const { keeper, untouched } = this;
    store.getState().leave();
    const { draft, locked } = store.getState();
    const { pastStates: past, futureStates: future } = store.temporal.getState();
    // Until it is written it can be had from here.
    if (!locked && !keeper.settled) this.unwritten.set(draft.id, keeper);
    await keeper.flush();
    // It may have been taken up again meanwhile.
    if (locked || this.keeper === keeper) return;
    if (untouched) keeper.drop();
    this.putDown.delete(draft.id);
    this.putDown.set(draft.id, { draft, past, future, revision: keeper.revision });
    const [oldest] = this.putDown.keys();
    if (this.putDown.size > remembered && oldest !== undefined) this.putDown.delete(oldest);
    if (keeper.settled) this.unwritten.delete(draft.id);
    this.tellUnkept();
    this.tellKept();
    if (untouched) await keep.removeForGood(draft.id).catch(() => undefined);
    report.listed();
  }

  private tellKept(): void {
    if (this.unwritten.size === 0 && this.keeper.pending === null) this.parts.report.keeping('kept');
  }

  private tellUnkept(): void {
    this.parts.report.unkept([...this.unwritten.values()].flatMap(({ pending }) => pending?.draft.job.name ?? []));
  }

  private async becomeEditor(): Promise<void> {
    const { store, tabs, report } = this.parts;
    const { id } = this;
    await this.follow();
    if ((await tabs.heldElsewhere(id)) || this.id !== id) return;
    store.getState().lock(false);
    report.elsewhere(false);
    await this.recover();
  }

  /** Takes up what was typed on a page that was killed before it was written. */
  private async recover(): Promise<void> {
    const { keep, journal, store } = this.parts;
    const { id, keeper } = this;
    const noted = journal.read(id);
    const draft = noted && keptDraft(noted.draft);
    if (!noted || !draft) return;
    const record = await keep.job(id).catch(() => null);
    if (record === null || this.keeper !== keeper || !keeper.settled) return;
    const stands = standing(noted, record);
    if (stands === 'newer') {
      keeper.revision = record?.revision ?? 0;
      store.getState().take(draft);
      return;
    }
    const keptApart = stands === 'apart' ? this.keepApart(draft) : undefined;
    journal.clear(id);
    await keptApart;
  }

  /** Shows the job as another page wrote it. */
  private async follow(): Promise<void> {
    const { keep, store } = this.parts;
    const { id } = this;
    try {
      const record = await keep.job(id);
      const draft = record && keptDraft(record.draft);
      if (!draft || this.id !== id || record.revision === this.keeper.revision) return;
      this.keeper.revision = record.revision;
      this.untouched = record.untouched ?? false;
      store.getState().take(draft);
    } catch (error) {
      this.parts.report.trouble(StorageFault.of(error).trouble);
    }
  }

  private keeperAt(revision: number): JobKeeper {
    const { keep, tabs, journal, report } = this.parts;
    let asksToPersist = true;
    const told = {
      kept: (job: string) => {
        if (keeper !== this.keeper) {
          this.unwritten.delete(job);
          this.tellUnkept();
        }
        tabs.tellWritten(job);
        // Storage writes again: what else waits need not wait longer.
        for (const other of [this.keeper, ...this.unwritten.values()]) if (other !== keeper) void other.flush();
        if (keeper === this.keeper || this.keeper.settled) this.tellKept();
        report.listed();
        if (asksToPersist && !this.untouched) {
          asksToPersist = false;
          askToPersist();
        }
      },
      failed: report.trouble,
      overtaken: (draft: Draft) =>
        void this.keepApart(this.id === draft.id ? this.parts.store.getState().draft : draft),
      cleared: (job: string) => {
        report.cleared();
        if (keeper === this.keeper) void keep.makeCurrent(job).catch(() => undefined);
      },
    };
    const keeper: JobKeeper = new JobKeeper(keep, revision, told, journal);
    return keeper;
  }

  /** Keeps what was typed as a job of its own, since the kept one has become another meanwhile. */
  private async keepApart({ job, typed }: Draft): Promise<void> {
    const { newId, report } = this.parts;
    const apart = { ...draftOf(job as never, newId()), typed };
    apart.job.name = `${job.name} (as typed here)`.slice(0, 200);
    report.tell(
      `${job.name} was changed elsewhere at the same time. What was typed here is kept beside it as ${apart.job.name}.`,
    );
    await this.takeNew(apart, false);
  }
}

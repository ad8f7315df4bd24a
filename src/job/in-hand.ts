import { type Draft, draftOf } from './draft';
import type { DraftStore, Steps } from './draft-store';
import { JobKeeper } from './job-keeper';
import { type Keep, type KeptJob, StorageFault, type StorageTrouble } from './keep';
import { keptDraft } from './kept-draft';
import type { Tabs } from './tabs';

export interface InHandReport {
  keeping(now: 'kept' | 'writing'): void;
  trouble(trouble: StorageTrouble): void;
  /** whether another page edits the job in hand */
  elsewhere(elsewhere: boolean): void;
  tell(notice: string): void;
  /** the list of jobs is not as it was */
  listed(): void;
}

export interface InHandParts {
  keep: Keep;
  tabs: Tabs;
  store: DraftStore;
  newId: () => string;
  report: InHandReport;
}

/** Steps of undo are remembered for so many jobs of a visit. */
const remembered = 8;

/**
 * The job in hand as storage and the other pages see it: who edits it, what of it is kept, and the change from one job
 * to the next. Nothing that was typed is dropped: what cannot be written over the kept job becomes a job of its own.
 */
export class InHand {
  private keeper: JobKeeper;
  private untouched = false;
  private readonly steps = new Map<string, Steps & { revision: number }>();

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
      free: (job) => {
        if (job === this.id && store.getState().locked) void this.becomeEditor(() => tabs.hold(job, this.lost));
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
  async takeKept(draft: Draft, record: KeptJob): Promise<void> {
    const leaving = this.leave();
    this.untouched = record.untouched ?? false;
    this.keeper = this.keeperAt(record.revision);
    const steps = this.steps.get(draft.id);
    this.parts.store.getState().take(draft, steps?.revision === record.revision ? steps : undefined);
    await leaving;
    await this.enter(draft);
  }

  /** Gets the job from the page that edits it. */
  takeOver(): Promise<void> {
    const { tabs } = this.parts;
    return this.becomeEditor(async () => {
      await tabs.takeOver(this.id, this.lost);
      return true;
    });
  }

  flush(): Promise<void> {
    return this.keeper.flush();
  }

  private readonly lost = () => {
    const { store, report } = this.parts;
    store.getState().leave();
    store.getState().lock(true);
    report.elsewhere(true);
  };

  private async enter(draft: Draft): Promise<void> {
    const { keep, tabs, store, report } = this.parts;
    await keep.makeCurrent(draft.id).catch(() => undefined);
    const mine = await tabs.hold(draft.id, this.lost);
    if (this.id !== draft.id) return;
    store.getState().lock(!mine);
    report.elsewhere(!mine);
    report.listed();
  }

  private async leave(): Promise<void> {
    const { keep, store, report } = this.parts;
    const { keeper, untouched } = this;
    const { draft, locked, leave } = store.getState();
    leave();
    const { pastStates: past, futureStates: future } = store.temporal.getState();
    await keeper.flush();
    if (locked || !keeper.settled) return;
    this.steps.delete(draft.id);
    this.steps.set(draft.id, { past, future, revision: keeper.revision });
    const [oldest] = this.steps.keys();
    if (this.steps.size > remembered && oldest !== undefined) this.steps.delete(oldest);
    if (untouched) await keep.removeForGood(draft.id).catch(() => undefined);
    report.listed();
  }

  private async becomeEditor(getHold: () => Promise<boolean>): Promise<void> {
    const { store, report } = this.parts;
    const { id } = this;
    if (!(await getHold()) || this.id !== id) return;
    await this.follow();
    store.getState().lock(false);
    report.elsewhere(false);
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
    const { keep, tabs, report } = this.parts;
    let asksToPersist = true;
    const keeper: JobKeeper = new JobKeeper(keep, revision, {
      kept: (job) => {
        tabs.tellWritten(job);
        if (keeper === this.keeper) report.keeping('kept');
        report.listed();
        if (asksToPersist && !this.untouched) {
          asksToPersist = false;
          askToPersist();
        }
      },
      failed: report.trouble,
      overtaken: (draft) => void this.keepApart(draft),
    });
    return keeper;
  }

  /** Keeps what was typed as a job of its own, since the kept one has become another meanwhile. */
  private async keepApart(draft: Draft): Promise<void> {
    const { store, newId, report } = this.parts;
    const now = this.id === draft.id ? store.getState().draft : draft;
    const apart = { ...draftOf(now.job as never, newId()), typed: now.typed };
    apart.job.name = `${now.job.name} (as typed here)`.slice(0, 200);
    report.tell(
      `${now.job.name} was changed elsewhere at the same time. What was typed here is kept beside it as ${apart.job.name}.`,
    );
    await this.takeNew(apart, false);
  }
}

/** Asks the browser not to clear what is kept when it runs out of room. Some browsers ask the person. */
function askToPersist(): void {
  if (typeof navigator === 'undefined') return;
  navigator.storage?.persist?.().catch(() => undefined);
}

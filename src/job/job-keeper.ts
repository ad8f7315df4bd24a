import type { Draft } from './draft';
import { type Journal, noJournal } from './journal';
import { type Keep, type KeptJob, StorageFault, type StorageTrouble } from './keep';

export interface KeeperReport {
  /** everything asked for is kept */
  kept(job: string): void;
  failed(trouble: StorageTrouble): void;
  /** somebody else wrote the job since; nothing was written over it */
  overtaken(draft: Draft): void;
  /** the job was not kept any more, and is now kept anew */
  cleared(job: string): void;
}

interface Waiting {
  draft: Draft;
  changedAt: number;
  untouched: boolean;
}

/** What could not be written is tried again after so long, then after twice as long and so on, ms. */
const firstWait = 1000;
const longestWait = 30_000;

/**
 * Writes the newest draft of one job, one write at a time. It is noted in the journal at once, and struck off there
 * when it is written. What could not be written is tried again, each time after a longer wait, and at once when the
 * draft changes.
 */
export class JobKeeper {
  private waiting: Waiting | null = null;
  /** what is being written */
  private underWay: Waiting | null = null;
  /** the journal has what waits */
  private noted = false;
  private dropped = false;
  private running: Promise<void> | null = null;
  /** between the start and the end of a write */
  private writing = false;
  private wait = firstWait;
  private retry: ReturnType<typeof setTimeout> | undefined;

  /** @param revision the one that the draft in hand was read with, 0 for a new job */
  constructor(
    private readonly keep: Pick<Keep, 'put' | 'job'>,
    public revision: number,
    private readonly report: KeeperReport,
    private readonly journal: Journal = noJournal,
  ) {}

  request(draft: Draft, untouched = false): void {
    this.waiting = { draft, changedAt: Date.now(), untouched };
    this.note();
    this.start();
  }

  /** Resolves when nothing is being written; tries once more what could not be written. */
  async flush(): Promise<void> {
    this.start();
    await this.running;
  }

  get settled(): boolean {
    return this.waiting === null && this.running === null;
  }

  /** What waits to be written or is being written, with the revision that it follows on. */
  get pending(): (KeptJob & { draft: Draft }) | null {
    const job = this.waiting ?? this.underWay;
    if (job === null) return null;
    const { draft, changedAt, untouched } = job;
    return { id: draft.id, draft, changedAt, revision: this.revision, ...(untouched && { untouched }) };
  }

  /** True where nothing but this page has what was typed last. */
  get atRisk(): boolean {
    const { pending } = this;
    return pending !== null && !pending.untouched && !this.noted;
  }

  /** Writes no more. */
  drop(): void {
    this.dropped = true;
    this.waiting = null;
    clearTimeout(this.retry);
  }

  private note(): void {
    if (this.waiting === null || this.waiting.untouched) return;
    const { draft, changedAt } = this.waiting;
    const revision = this.revision + (this.writing ? 1 : 0);
    this.noted = this.journal.note({ id: draft.id, draft, changedAt, revision });
  }

  private start(): void {
    clearTimeout(this.retry);
    if (this.waiting === null) return;
    this.running ??= this.run().then((goOn) => {
      this.running = null;
      // Asked for after the last write had ended.
      if (goOn) this.start();
    });
  }

  /** False where a write failed or was refused: the next request tries again. */
  private async run(): Promise<boolean> {
    while (this.waiting) {
      const job = this.waiting;
      this.waiting = null;
      this.underWay = job;
      const { draft, changedAt, untouched } = job;
      try {
        const record = { id: draft.id, draft, changedAt, revision: this.revision, ...(untouched && { untouched }) };
        this.writing = true;
        const revision = await this.keep.put(record);
        this.writing = false;
        if (revision === null && this.revision > 0 && (await this.keep.job(draft.id)) === undefined) {
          this.revision = 0;
          this.waiting ??= job;
          this.report.cleared(draft.id);
          continue;
        }
        if (revision === null) {
          this.waiting = null;
          this.report.overtaken(draft);
          this.journal.clear(draft.id);
          return false;
        }
        this.revision = revision;
        this.wait = firstWait;
        if (this.waiting !== null) continue;
        this.underWay = null;
        this.journal.clear(draft.id);
        this.report.kept(draft.id);
      } catch (error) {
        this.writing = false;
        if (this.dropped) return false;
        this.waiting ??= job;
        this.note();
        this.retry = setTimeout(() => this.start(), this.wait);
        this.wait = Math.min(2 * this.wait, longestWait);
        this.report.failed(StorageFault.of(error).trouble);
        return false;
      } finally {
        this.underWay = null;
      }
    }
    return true;
  }
}

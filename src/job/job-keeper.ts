import type { Draft } from './draft';
import { type Keep, StorageFault, type StorageTrouble } from './keep';

export interface KeeperReport {
  /** everything asked for is kept */
  kept(job: string): void;
  failed(trouble: StorageTrouble): void;
  /** somebody else wrote the job since; nothing was written over it */
  overtaken(draft: Draft): void;
}

/** Writes the newest draft of one job, one write at a time. What could not be written waits for the next try. */
export class JobKeeper {
  private waiting: { draft: Draft; changedAt: number; untouched: boolean } | null = null;
  private running: Promise<void> | null = null;

  /** @param revision the one that the draft in hand was read with, 0 for a new job */
  constructor(
    private readonly keep: Pick<Keep, 'put'>,
    public revision: number,
    private readonly report: KeeperReport,
  ) {}

  request(draft: Draft, untouched = false): void {
    this.waiting = { draft, changedAt: Date.now(), untouched };
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

  private start(): void {
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
      const { draft, changedAt, untouched } = job;
      try {
        const record = { id: draft.id, draft, changedAt, revision: this.revision, ...(untouched && { untouched }) };
        const revision = await this.keep.put(record);
        if (revision === null) {
          this.waiting = null;
          this.report.overtaken(draft);
          return false;
        }
        this.revision = revision;
        if (this.waiting === null) this.report.kept(draft.id);
      } catch (error) {
        this.waiting ??= job;
        this.report.failed(StorageFault.of(error).trouble);
        return false;
      }
    }
    return true;
  }
}

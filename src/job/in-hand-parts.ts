import type { DraftStore } from './draft-store';
import type { Journal } from './journal';
import type { Keep, StorageTrouble } from './keep';
import type { Tabs } from './tabs';

/** What the job in hand tells the page. */
export interface InHandReport {
  keeping(now: 'kept' | 'writing'): void;
  trouble(trouble: StorageTrouble): void;
  /** whether another page edits the job in hand */
  elsewhere(elsewhere: boolean): void;
  tell(notice: string): void;
  /** a job was not in the storage any more, and has been kept anew */
  cleared(): void;
  /** the list of jobs is not as it was */
  listed(): void;
  /** names of the jobs that were put down before their last changes could be written */
  unkept(names: string[]): void;
}

/** What it works with. */
export interface InHandParts {
  keep: Keep;
  tabs: Tabs;
  journal: Journal;
  store: DraftStore;
  newId: () => string;
  report: InHandReport;
}

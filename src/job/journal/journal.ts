import type { KeptJob } from '../keep';

/**
 * Jobs whose last change the database may not have yet. Noting one is done when the call returns, so that a page
 * that is killed while a write waits loses no keystroke.
 */
export interface Journal {
  /**
   * Notes a job in place of what was noted of it before. `revision`: the last one that the page has written.
   * @returns false where it could not be noted
   */
  note(job: KeptJob): boolean;
  read(id: string): KeptJob | null;
  ids(): string[];
  /** The database has it. */
  clear(id: string): void;
}

export const noJournal: Journal = {
  note: () => false,
  read: () => null,
  ids: () => [],
  clear: () => undefined,
};

/** One page's say in which of several open pages edits a job. */
export interface Tabs {
  /**
   * Tries to become the page that edits the job.
   * @param lost called when another page took it over
   * @param freed the page that had it has just said that it lets go, which may take it a while
   * @returns false where another page edits it
   */
  hold(job: string, lost: () => void, freed?: boolean): Promise<boolean>;
  /** As `hold`, but the page that has the job keeps what it has and gives it up. */
  takeOver(job: string, lost: () => void): Promise<void>;
  /** Lets go of the job in hand and tells the pages that look at it. */
  letGo(): void;
  /** Whether another page edits the job. */
  heldElsewhere(job: string): Promise<boolean>;
  /** Tells the other pages that a job was written. */
  tellWritten(job: string): void;
  listen(listener: TabListener): void;
}

export interface TabListener {
  /** Another page wrote the job. */
  written(job: string): void;
  /** Another page that edited the job has let go of it. */
  free(job: string): void;
  /** Another page wants the job that this one edits: keep everything, then resolve. */
  wanted(job: string): Promise<void>;
}

/** A page of its own, for browsers without locks: there the revisions in storage alone keep pages apart. */
export const onlyTab: Tabs = {
  hold: async () => true,
  takeOver: async () => undefined,
  letGo: () => undefined,
  heldElsewhere: async () => false,
  tellWritten: () => undefined,
  listen: () => undefined,
};

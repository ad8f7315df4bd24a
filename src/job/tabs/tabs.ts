/** One page's say in which of several open pages edits a job. */
export interface Tabs {
  /**
   * Tries to become the page that edits the job.
   * @param lost called when another page took it over
   * @returns false where another page edits it; once that page lets go or is gone, the listener is `given` the job
   */
  hold(job: string, lost: () => void): Promise<boolean>;
  /** As `hold`, but the page that has the job keeps what it has and gives it up. */
  takeOver(job: string, lost: () => void): Promise<void>;
  /** Lets go of the job in hand, or waits for it no more. */
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
  /** The job that another page edited is this page's to edit. */
  given(job: string): void;
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

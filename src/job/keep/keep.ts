/** A job as kept between visits. `draft` is checked when it is read: an older version may have written it. */
export interface KeptJob {
  id: string;
  draft: unknown;
  /** ms since 1970 */
  changedAt: number;
  /** counts what was written, so that nobody writes over what he has not seen */
  revision: number;
  /** a demo or an empty job in which nothing has been changed */
  untouched?: boolean;
  /** ms since 1970; such a job waits to be brought back or removed for good */
  deletedAt?: number;
}

export interface KeptPhoto {
  job: string;
  /** unique within its job; readings name it */
  id: string;
  bytes: Uint8Array<ArrayBuffer>;
  /** media type */
  type: string;
  width: number;
  height: number;
  /** ms since 1970 */
  takenAt: number;
}

/** The points of a scan; the job holds what was taken from them under the same id. */
export interface KeptScan {
  job: string;
  /** unique within its job */
  id: string;
  /** x y z of each point in the job's frame, mm, as near as the scan alone tells */
  positions: Float32Array;
  /** what each point belongs to */
  labels: Uint8Array;
  /** ms since 1970 */
  keptAt: number;
}

/** Where jobs and their photos are kept between visits. Every call may reject: storage can be blocked or full. */
export interface Keep {
  /** the job that this tab, or else the last visit, had in hand */
  current(): Promise<KeptJob | undefined>;
  job(id: string): Promise<KeptJob | undefined>;
  /** all jobs, deleted ones too */
  jobs(): Promise<KeptJob[]>;
  /**
   * Keeps the job, all or nothing.
   * @param job with the revision that it was made from, 0 for a new one
   * @returns the new revision; null, and nothing is written, where the job was written by somebody else since
   */
  put(job: KeptJob): Promise<number | null>;
  /** Makes it the job that the next visit opens on. */
  makeCurrent(id: string): Promise<void>;
  /** Keeps new jobs with their photos, all or nothing. */
  bringIn(jobs: readonly KeptJob[], photos: readonly KeptPhoto[]): Promise<void>;
  /** Marks a job as deleted, or as not deleted any more. */
  markDeleted(id: string, deletedAt: number | undefined): Promise<void>;
  /** Removes a job, all of its photos and the points of its scans. */
  removeForGood(id: string): Promise<void>;
  putPhoto(photo: KeptPhoto): Promise<void>;
  photo(job: string, id: string): Promise<KeptPhoto | undefined>;
  photos(job: string): Promise<KeptPhoto[]>;
  removePhoto(job: string, id: string): Promise<void>;
  putScan(scan: KeptScan): Promise<void>;
  scan(job: string, id: string): Promise<KeptScan | undefined>;
  scanIds(job: string): Promise<string[]>;
  removeScan(job: string, id: string): Promise<void>;
  /** Keeps a text under a name of its own, beside the jobs. */
  remember(what: string, text: string): Promise<void>;
  recall(what: string): Promise<string | undefined>;
}

import type { KeptJob } from '../keep';
import { keptDraft } from '../kept-draft';
import { usable } from '../usable';

/** A kept job in a line of the list. */
export interface JobSummary {
  id: string;
  name: string;
  place: string;
  /** ms since 1970 */
  changedAt: number;
  readings: number;
  /** entries that are not finished or not understood */
  unfinished: number;
  photos: number;
  /** false where another version kept it in a way that this one does not know */
  readable: boolean;
  untouched: boolean;
  /** ms since 1970; null for a job that is not deleted */
  deletedAt: number | null;
}

export function summaryOf({ id, draft: kept, changedAt, untouched, deletedAt }: KeptJob): JobSummary {
  const draft = keptDraft(kept);
  return {
    id,
    name: draft?.job.name ?? nameIn(kept) ?? 'A job of another version',
    place: draft?.job.place ?? '',
    changedAt,
    readings: draft?.job.readings.length ?? 0,
    unfinished: draft ? usable(draft).setAside.length : 0,
    photos: draft?.job.readings.reduce((sum, { photos }) => sum + (photos?.length ?? 0), 0) ?? 0,
    readable: draft !== null,
    untouched: untouched ?? false,
    deletedAt: deletedAt ?? null,
  };
}

function nameIn(kept: unknown): string | null {
  const name = (kept as { job?: { name?: unknown } } | null)?.job?.name;
  return typeof name === 'string' ? name : null;
}

/** The jobs in whose name or place every word of the text occurs, the last changed first. */
export function found(jobs: readonly JobSummary[], text: string): JobSummary[] {
  const words = folded(text).split(/\s+/).filter(Boolean);
  return jobs
    .filter(({ name, place }) => words.every((word) => folded(`${name} ${place}`).includes(word)))
    .sort((a, b) => b.changedAt - a.changedAt);
}

const folded = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

import type { EarlierValue } from '../core';
import type { DraftJob } from './draft';
import { type FieldPath, valueAt, withValueAt } from './path';

/** More than anybody enters into one field; the oldest go first. */
const MOST = 50;

/** The values that stood in a field before its own, oldest first. */
export const historyAt = (job: DraftJob, value: FieldPath): readonly EarlierValue[] =>
  (valueAt(job, [...value.slice(0, -1), 'history']) as EarlierValue[] | undefined) ?? [];

/** Adds what a reading's field held before it was typed in to its history, where that is something else. */
export function withHistory(job: DraftJob, path: FieldPath, before: unknown, now: Date): DraftJob {
  if (path[0] !== 'readings' || path.at(-1) !== 'value') return job;
  if (typeof before !== 'number' || before === valueAt(job, path)) return job;
  const longer = [...historyAt(job, path), { value: before, until: now.toISOString() }].slice(-MOST);
  return withValueAt(job, [...path.slice(0, -1), 'history'], longer);
}

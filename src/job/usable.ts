import { type Fault, type Job, jobSchema, parseJob } from '../core';
import type { Draft, DraftFixture, DraftReading, DraftStud } from './draft';
import { isBlank } from './entry';
import { pathOfKey, startsWith } from './path';

type ItemList = 'readings' | 'fixtures' | 'studs';

/** A reading, fixture or stud that cannot be used yet, and why. */
export interface SetAside {
  list: ItemList;
  id: string;
  faults: Fault[];
}

export type Usable =
  | { ok: true; job: Job; setAside: SetAside[] }
  | { ok: false; faults: Fault[]; setAside: SetAside[] };

/**
 * The part of a draft that makes a job. Readings and fixtures with a missing value or a text that is not understood
 * are set aside; elsewhere the last understood value stands.
 * @param typing key of the field being typed in: its last understood value stands until it is left
 */
export function usable(draft: Draft, typing: string | null = null): Usable {
  const setAside: SetAside[] = [];
  const keep = <T extends DraftReading | DraftFixture | DraftStud>(list: ItemList, items: readonly T[]): T[] =>
    items.filter((item) => {
      const faults = faultsOf(draft, list, item, typing);
      if (faults.length > 0) setAside.push({ list, id: item.id, faults });
      return faults.length === 0;
    });
  const { job } = draft;
  const parsed = parseJob({
    ...job,
    readings: keep('readings', job.readings),
    fixtures: keep('fixtures', job.fixtures),
    studs: keep('studs', job.studs ?? []),
  });
  return parsed.ok ? { ...parsed, setAside } : { ...parsed, setAside };
}

function faultsOf(
  draft: Draft,
  list: ItemList,
  item: DraftReading | DraftFixture | DraftStud,
  typing: string | null,
): Fault[] {
  const unread = Object.keys(draft.typed)
    .filter((key) => key !== typing && startsWith(pathOfKey(key), [list, item.id]))
    .map((key) => ({
      path: pathOfKey(key).slice(2).join('/'),
      message: isBlank(draft.typed[key] ?? '') ? 'needs a value' : 'is not understood yet',
    }));
  const parsed = jobSchema.shape[list].safeParse([item]);
  if (parsed.success) return unread;
  const seen = new Set(unread.map(({ path }) => path));
  const invalid = parsed.error.issues
    .map((issue) => ({
      path: [...issue.path.slice(1), ...(issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [])]
        .map(String)
        .join('/'),
      message: issue.code === 'invalid_type' ? 'needs a value' : issue.message,
    }))
    .filter(({ path }) => !seen.has(path));
  return [...unread, ...invalid];
}

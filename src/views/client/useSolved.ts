import { useEffect, useMemo, useState } from 'react';
import { basisOf, type Job, type Result } from '../../core';
import { useSession } from '../../job';

/** Of jobs shown lately. */
const MOST_KEPT = 12;

export interface Solved {
  job: Job;
  /** null while it is worked out */
  result: Result | null;
  failed: boolean;
}

/** Jobs with their results, worked out beside the page; the last few are kept. */
export function useSolved(jobs: readonly Job[]): Solved[] {
  const { solve } = useSession();
  const keys = useMemo(() => jobs.map(basisOf), [jobs]);
  const [results, setResults] = useState<ReadonlyMap<string, Result | null>>(new Map());
  useEffect(() => {
    let gone = false;
    const put = (key: string, result: Result | null) => {
      if (!gone) setResults((before) => new Map([...[...before].slice(-MOST_KEPT), [key, result]]));
    };
    keys.forEach((key, i) => {
      solve(jobs[i]!).then(
        (result) => put(key, result),
        () => put(key, null),
      );
    });
    return () => {
      gone = true;
    };
  }, [keys, jobs, solve]);
  return useMemo(
    () =>
      jobs.map((job, i) => {
        const result = results.get(keys[i]!);
        return { job, result: result ?? null, failed: result === null };
      }),
    [jobs, keys, results],
  );
}

import { useMemo } from 'react';
import { applyChoice, type Job, type Result } from '../../core';
import { useSolved } from './useSolved';

/** One way to finish the alcove, the job's own first. */
export interface Way {
  id: string | null;
  name: string;
  job: Job;
  result: Result | null;
  failed: boolean;
}

/** What the job's own way is called. */
export const OWN_WAY = 'As planned';

/** The job as it stands and its other choices, each with its result as soon as there is one. */
export function useWays(job: Job, result: Result): Way[] {
  const jobs = useMemo(() => job.choices.map((choice) => applyChoice(job, choice)), [job]);
  const solved = useSolved(jobs);
  return useMemo(
    () => [
      { id: null, name: OWN_WAY, job, result, failed: false },
      ...solved.map((each, i): Way => ({ id: job.choices[i]!.id, name: job.choices[i]!.id, ...each })),
    ],
    [job, result, solved],
  );
}

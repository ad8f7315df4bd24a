import { useCallback, useEffect, useState } from 'react';
import { type JobSummary, useSession, useSessionState } from '../../job';

export interface JobList {
  /** null until they have been read */
  jobs: JobSummary[] | null;
  failed: boolean;
  refresh(): Promise<void>;
}

/** The jobs that this browser keeps, read again when one may have changed. */
export function useJobs(): JobList {
  const { shelf } = useSession();
  const listed = useSessionState((state) => state.listed);
  const keeping = useSessionState((state) => state.keeping);
  const [jobs, setJobs] = useState<JobSummary[] | null>(null);
  const [failed, setFailed] = useState(false);
  const refresh = useCallback(async () => {
    try {
      setJobs(await shelf.list());
      setFailed(false);
    } catch {
      setFailed(true);
    }
  }, [shelf]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: they tell that a job was written
  useEffect(() => void refresh(), [refresh, listed, keeping]);
  return { jobs, failed, refresh };
}

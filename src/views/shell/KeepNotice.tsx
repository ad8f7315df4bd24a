import type { StorageTrouble } from '../../job';
import { useSession, useSessionState } from '../../job';
import { Callout } from '../parts';
import styles from './shell.module.css';

const words: Record<StorageTrouble, string> = {
  blocked:
    'This browser gives the page no storage (a private window, or a setting): jobs stay only as long as this page.',
  full: 'There is no room left on this device: the last changes are not kept yet. Make room, or remove deleted jobs for good.',
  newer: 'A newer version keeps the jobs now, and what this page changes is not kept. Load the page again.',
  held: 'Another page of an older version holds the jobs: what this page changes is not kept. Close the other page and load this one again.',
  failed: 'The browser did not keep the last changes.',
};

/** Where the job stands between this page, storage and other pages; nothing where all is well. */
export function KeepNotice() {
  const { dismissCleared } = useSession();
  const trouble = useSessionState((state) => state.trouble);
  const cleared = useSessionState((state) => state.cleared);
  const unkept = useSessionState((state) => state.unkept);
  if (trouble === null && cleared)
    return (
      <Callout weight="warn">
        <div className={styles.notice}>
          <p>
            This job was not in the browser’s storage any more: the storage was cleared, or the job was removed
            elsewhere. It is kept again as it stands here; photos and other jobs may be gone. Save it as a file to be
            safe.
          </p>
          <button type="button" onClick={dismissCleared}>
            Close
          </button>
        </div>
      </Callout>
    );
  if (trouble === null) return null;
  return (
    <Callout weight="warn">
      <p>{words[trouble]} Save the job as a file before you close the page.</p>
      {unkept.length > 0 && (
        <p>
          Not kept either, since you put {unkept.length === 1 ? 'it' : 'them'} down: the last changes of{' '}
          {unkept.join(', ')}. {unkept.length === 1 ? 'It stands' : 'They stand'} under All jobs; open{' '}
          {unkept.length === 1 ? 'it' : 'one'} there, or save all jobs in one file.
        </p>
      )}
    </Callout>
  );
}

/** Tells that another page edits the job, and gets it from there. */
export function ElsewhereNotice() {
  const { editHere } = useSession();
  const elsewhere = useSessionState((state) => state.elsewhere);
  if (!elsewhere) return null;
  return (
    <Callout weight="plain">
      <div className={styles.notice}>
        <p>This job is being edited in another tab. What is entered there shows here; nothing can be changed here.</p>
        <button type="button" onClick={() => void editHere()}>
          Edit here
        </button>
      </div>
    </Callout>
  );
}

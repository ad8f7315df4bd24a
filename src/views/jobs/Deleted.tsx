import { AlertDialog } from 'radix-ui';
import { useRef } from 'react';
import { deletedFor, type JobSummary } from '../../job';
import { counted } from '../../output';
import { Card, handFocusOn, RemoveButton } from '../parts';
import styles from './jobs.module.css';
import { contentsOf, waitsFor } from './words';

interface DeletedProps {
  jobs: readonly JobSummary[];
  onBringBack(job: JobSummary): void;
  onRemove(job: JobSummary): void;
}

/** Deleted jobs, until they are removed for good. */
export function Deleted({ jobs, onBringBack, onRemove }: DeletedProps) {
  if (jobs.length === 0) return null;
  return (
    <Card title="Deleted" rows aside={<span>{counted(jobs.length, 'job')}</span>}>
      <p className={styles.about}>
        A deleted job takes up room, with its photos, for at least {deletedFor} days. Then it is removed for good.
      </p>
      <ul className={styles.list} aria-label="Deleted jobs">
        {jobs.map((job) => (
          <li key={job.id} className={styles.row} data-row>
            <div className={styles.what}>
              <h3 className={styles.name}>{job.name}</h3>
              {job.place !== '' && <p className={styles.place}>{job.place}</p>}
              <p className={styles.about}>
                {contentsOf(job)} · {waitsFor(job.deletedAt ?? 0, deletedFor)}
              </p>
            </div>
            <div className={styles.buttons}>
              <RemoveButton as="bring-back" onRemove={() => onBringBack(job)}>
                Bring back<span className="unseen"> {job.name}</span>
              </RemoveButton>
              <RemoveForGood job={job} onRemove={() => onRemove(job)} />
            </div>
          </li>
        ))}
      </ul>
    </Card>
  );
}

function RemoveForGood({ job, onRemove }: { job: JobSummary; onRemove(): void }) {
  const asked = useRef<HTMLButtonElement>(null);
  return (
    <AlertDialog.Root>
      <AlertDialog.Trigger ref={asked} data-removes="for-good">
        Remove for good<span className="unseen">: {job.name}</span>
      </AlertDialog.Trigger>
      <AlertDialog.Portal>
        <AlertDialog.Overlay className={styles.veil} />
        <AlertDialog.Content className={styles.question}>
          <AlertDialog.Title>Remove {job.name} for good?</AlertDialog.Title>
          <AlertDialog.Description>
            {contentsOf(job)}. Nothing brings it back after that, unless it is in a file that you saved.
          </AlertDialog.Description>
          <div className={styles.buttons}>
            <AlertDialog.Cancel>Let it stay</AlertDialog.Cancel>
            <AlertDialog.Action
              className={styles.danger}
              onClick={() => asked.current && handFocusOn(asked.current, onRemove)}
            >
              Remove for good
            </AlertDialog.Action>
          </div>
        </AlertDialog.Content>
      </AlertDialog.Portal>
    </AlertDialog.Root>
  );
}

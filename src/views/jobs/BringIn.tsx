import { Dialog } from 'radix-ui';
import { useRef, useState } from 'react';
import { type Done, type JobsRead, loadJobsFile, useSession } from '../../job';
import { counted } from '../../output';
import styles from './jobs.module.css';
import { contentsOf } from './words';

const faultsShown = 20;

/** Brings jobs in from a file, after it has shown which. */
export function BringIn({ onDone }: { onDone(done: Done, brought: number): void }) {
  const { shelf } = useSession();
  const picker = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<{ name: string; read: JobsRead } | null>(null);

  const read = async (chosen: File | undefined) => {
    if (!chosen) return;
    try {
      const { readJobsFile } = await loadJobsFile();
      setFile({ name: chosen.name, read: await readJobsFile(chosen) });
    } catch {
      const message = 'The file could not be read. Check that it is still there and try again.';
      setFile({ name: chosen.name, read: { ok: false, message, faults: [] } });
    }
  };
  const refusal = file && !file.read.ok ? file.read : null;
  const ready = file?.read.ok ? file.read.jobs.flatMap(({ job }) => job ?? []) : [];
  return (
    <>
      <input
        ref={picker}
        type="file"
        accept=".zip,.json,application/zip,application/json"
        hidden
        data-testid="jobs-file"
        onChange={({ target }) => {
          void read(target.files?.[0]);
          target.value = '';
        }}
      />
      <button type="button" onClick={() => picker.current?.click()}>
        Bring in jobs from a file…
      </button>
      <Dialog.Root open={file !== null} onOpenChange={(open) => !open && setFile(null)}>
        <Dialog.Portal>
          <Dialog.Overlay className={styles.veil} />
          <Dialog.Content className={styles.question}>
            <Dialog.Title className={styles.name}>
              {file?.read.ok ? `In ${file.name}` : `${file?.name} was not brought in`}
            </Dialog.Title>
            <Dialog.Description>
              {file?.read.ok
                ? 'Each comes in as a job of its own; nothing that is here is written over.'
                : `${refusal?.message} The jobs here are as they were.`}
            </Dialog.Description>
            {file?.read.ok ? <Contents read={file.read} /> : <Faults faults={refusal?.faults ?? []} />}
            <div className={styles.buttons}>
              {file?.read.ok && (
                <button
                  type="button"
                  className={styles.main}
                  disabled={ready.length === 0}
                  onClick={async () => {
                    const done = await shelf.bringIn(ready);
                    setFile(null);
                    onDone(done, ready.length);
                  }}
                >
                  Bring in {counted(ready.length, 'job')}
                </button>
              )}
              <Dialog.Close>Close</Dialog.Close>
            </div>
          </Dialog.Content>
        </Dialog.Portal>
      </Dialog.Root>
    </>
  );
}

function Contents({ read }: { read: Extract<JobsRead, { ok: true }> }) {
  return (
    <ul className={styles.list} aria-label="Jobs in the file">
      {read.jobs.map((job, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two jobs of a file may be alike
        <li key={i} className={styles.row}>
          <div className={styles.what}>
            <h3 className={styles.name}>{job.name}</h3>
            {job.place !== '' && <p className={styles.place}>{job.place}</p>}
            <p className={styles.about}>{job.job ? contentsOf(job) : 'Stays out: it cannot be read as a job'}</p>
            <Faults faults={job.faults} />
          </div>
        </li>
      ))}
    </ul>
  );
}

function Faults({ faults }: { faults: readonly { path: string; message: string }[] }) {
  if (faults.length === 0) return null;
  return (
    <ul className={styles.faults} aria-label="Faults in the file">
      {faults.slice(0, faultsShown).map(({ path, message }) => (
        <li key={`${path} ${message}`}>
          <code>{path}</code> {message}
        </li>
      ))}
      {faults.length > faultsShown && <li>and {faults.length - faultsShown} more</li>}
    </ul>
  );
}

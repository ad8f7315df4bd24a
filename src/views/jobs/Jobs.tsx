import { useEffect, useRef, useState } from 'react';
import { type Done, download, found, type JobSummary, loadJobsFile, useDraft, useSession } from '../../job';
import { counted } from '../../output';
import { Callout, Card, type Weight } from '../parts';
import { goTo } from '../place';
import { BringIn } from './BringIn';
import { Deleted } from './Deleted';
import { JobRow } from './JobRow';
import styles from './jobs.module.css';
import { NewJob } from './NewJob';
import { useJobs } from './useJobs';

interface Said {
  weight: Weight;
  words: string;
  /** a job that can be brought back */
  deleted?: JobSummary;
}

/** All jobs that this browser keeps: found, opened, copied, renamed, deleted, saved in a file and brought in from one. */
export function Jobs() {
  const { shelf } = useSession();
  const inHand = useDraft(({ draft }) => draft.id);
  const { jobs, failed, refresh } = useJobs();
  const [words, setWords] = useState('');
  const [said, setSaid] = useState<Said | null>(null);
  const busy = useRef(false);
  const bringBack = useRef<HTMLButtonElement>(null);
  const deleted = said?.deleted;
  // What was deleted had the focus.
  useEffect(() => {
    if (deleted) bringBack.current?.focus();
  }, [deleted]);
  const backAgain = useRef<string | null>(null);
  useEffect(() => {
    const back = jobs?.find(({ id, deletedAt }) => id === backAgain.current && deletedAt === null);
    if (!back) return;
    const row = document.querySelector(`[data-job="${CSS.escape(back.id)}"]`);
    (row?.querySelector<HTMLElement>('button:enabled') ?? document.querySelector('main'))?.focus();
    backAgain.current = null;
  }, [jobs]);

  const attempt = async (work: () => Promise<Done>, done: Said | null) => {
    if (busy.current) return;
    busy.current = true;
    try {
      const did = await work();
      setSaid(did.ok ? done : { weight: 'bad', words: did.fault });
      if (did.ok && done === null) goTo({ name: 'site', part: 'readings' });
      await refresh();
    } finally {
      busy.current = false;
    }
  };
  const save = async (ids: readonly string[]) => {
    try {
      const { packJobs } = await loadJobsFile();
      const packed = packJobs(await shelf.read(ids));
      if (packed.ok) download(packed.name, packed.content, packed.type);
      setSaid(
        packed.ok ? { weight: 'good', words: `Saved ${packed.name}.` } : { weight: 'bad', words: packed.message },
      );
    } catch {
      setSaid({ weight: 'bad', words: 'The file could not be made. The jobs are as they were; try again.' });
    }
  };

  if (failed)
    return (
      <Callout weight="bad">
        The jobs cannot be listed: the browser’s storage did not answer. Save the job in hand as a job file, then load
        the page again.
      </Callout>
    );
  if (jobs === null) return <p>Looking for the jobs…</p>;
  const there = jobs.filter(({ deletedAt }) => deletedAt === null);
  const shown = found(there, words);
  const own = there.filter(({ untouched, readable }) => !untouched && readable);
  return (
    <div className={styles.page} data-rows>
      <div className={styles.head}>
        <h2>All jobs</h2>
        <NewJob />
      </div>
      <div role="status" className={styles.said}>
        {said && (
          <Callout weight={said.weight}>
            <div className={styles.sentence}>
              <p>{said.words}</p>
              {said.deleted && (
                <button
                  type="button"
                  ref={bringBack}
                  onClick={() => {
                    const { id = '', name } = said.deleted ?? {};
                    backAgain.current = id;
                    void attempt(() => shelf.bringBack(id), {
                      weight: 'good',
                      words: `${name} is back, with all that was in it.`,
                    });
                  }}
                >
                  Bring it back
                </button>
              )}
            </div>
          </Callout>
        )}
      </div>
      {own.length === 0 && (
        <Callout weight="plain">
          <p>
            There is no job of your own yet. Start an empty one, look at a demo, or bring in a file from another device.
          </p>
        </Callout>
      )}
      <Card title="Kept in this browser" aside={<span>{counted(there.length, 'job')}</span>}>
        {there.length > 0 && (
          <label className={styles.search}>
            <span>Search by name or place</span>
            <input type="search" value={words} autoComplete="off" onChange={({ target }) => setWords(target.value)} />
          </label>
        )}
        <p role="status" className={words === '' ? 'unseen' : undefined}>
          {words === '' ? '' : `${counted(shown.length, 'job')} found`}
        </p>
        {shown.length > 0 && (
          <ul className={styles.list} aria-label="Jobs">
            {shown.map((job) => (
              <JobRow
                key={job.id}
                job={job}
                inHand={job.id === inHand}
                onOpen={() => void attempt(() => shelf.open(job.id), null)}
                onRename={(name) =>
                  void attempt(() => shelf.rename(job.id, name), { weight: 'good', words: `It is called ${name} now.` })
                }
                onCopy={() =>
                  void attempt(() => shelf.copy(job.id), {
                    weight: 'good',
                    words: `${job.name} is there once more, as a copy.`,
                  })
                }
                onSave={() => void save([job.id])}
                onDelete={() =>
                  void attempt(() => shelf.remove(job.id), {
                    weight: 'plain',
                    words: `${job.name} is deleted.`,
                    deleted: job,
                  })
                }
              />
            ))}
          </ul>
        )}
        {shown.length === 0 && words !== '' && (
          <div>
            <button type="button" onClick={() => setWords('')}>
              Show all jobs
            </button>
          </div>
        )}
      </Card>
      <Card title="In a file">
        <p className={styles.about}>
          Jobs live in this browser alone. Save them in a file to move them to another device, or to have a copy should
          this one be lost.
        </p>
        <div className={styles.buttons}>
          <button type="button" disabled={own.length === 0} onClick={() => void save(own.map(({ id }) => id))}>
            Save all jobs in one file
          </button>
          <BringIn
            onDone={(did, brought) => {
              setSaid(
                did.ok
                  ? { weight: 'good', words: `${counted(brought, 'job')} brought in, beside those that were here.` }
                  : { weight: 'bad', words: did.fault },
              );
              void refresh();
            }}
          />
        </div>
      </Card>
      <Deleted
        jobs={jobs.filter(({ deletedAt }) => deletedAt !== null)}
        onBringBack={(job) =>
          void attempt(() => shelf.bringBack(job.id), {
            weight: 'good',
            words: `${job.name} is back, with all that was in it.`,
          })
        }
        onRemove={(job) =>
          void attempt(() => shelf.removeForGood(job.id), {
            weight: 'plain',
            words: `${job.name} is removed for good.`,
          })
        }
      />
    </div>
  );
}

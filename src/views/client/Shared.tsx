import { useEffect, useMemo, useState } from 'react';
import type { Job, Result } from '../../core';
import { useSession } from '../../job';
import { loadSharing, type ReadLink } from '../../output';
import { Callout, Card } from '../parts';
import { goTo } from '../place';
import { Choices } from './Choices';
import styles from './client.module.css';
import { Look } from './Look';
import { Priced } from './Priced';
import { useSolved } from './useSolved';

/** A job that came in the address: to look at, and to copy into one's own jobs. */
export function Shared({ link }: { link: string }) {
  const [read, setRead] = useState<ReadLink | null>(null);
  useEffect(() => {
    let gone = false;
    setRead(null);
    loadSharing().then(
      ({ readLink }) => gone || setRead(readLink(link)),
      () => gone || setRead({ ok: false, message: 'What reads links could not be loaded. Load this page again.' }),
    );
    return () => {
      gone = true;
    };
  }, [link]);
  if (read === null) return <p>Opening the link…</p>;
  if (!read.ok) {
    return (
      <Callout weight="bad">
        <h2>The link was not opened</h2>
        <p>{read.message}</p>
        <p>
          Your own jobs are as they were. <a href="#site/readings">Go to them</a>
        </p>
      </Callout>
    );
  }
  return <SharedJob job={read.job} />;
}

function SharedJob({ job }: { job: Job }) {
  const session = useSession();
  const jobs = useMemo(() => [job], [job]);
  const [solved] = useSolved(jobs);
  const mine = () => {
    void session.keepJob(job);
    goTo({ name: 'client', part: 'look' });
  };
  return (
    <div className={styles.column}>
      <Card
        title={job.name}
        aside={
          <button type="button" className={styles.mine} onClick={mine}>
            Make it mine
          </button>
        }
      >
        <p>
          {job.quote.client === '' ? 'A job that somebody shared' : `Shared for ${job.quote.client}`}: to look at,
          nothing here changes it. “Make it mine” copies it into your jobs.
        </p>
      </Card>
      {solved?.failed && (
        <Callout weight="bad">
          <p>This job could not be worked out.</p>
        </Callout>
      )}
      {solved?.result ? (
        <SharedViews job={job} result={solved.result} />
      ) : (
        !solved?.failed && <p>Working out how it will look…</p>
      )}
    </div>
  );
}

function SharedViews({ job, result }: { job: Job; result: Result }) {
  return job.choices.length > 0 ? (
    <>
      <Choices job={job} result={result} readOnly />
      <Priced job={job} result={result} />
    </>
  ) : (
    <>
      <Look job={job} result={result} readOnly />
      <Priced job={job} result={result} />
    </>
  );
}

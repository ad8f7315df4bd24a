import type { DisplayUnit } from '../../core';
import { useDraft, useHistory, useSession, useSessionState } from '../../job';
import { Question, Redo, Segments, Undo } from '../parts';
import { addressOf, guideFor, usePlace } from '../place';
import { JobMenu } from './JobMenu';
import { Mark } from './Mark';
import { Places } from './Places';
import styles from './shell.module.css';

const units: readonly (readonly [DisplayUnit, string])[] = [
  ['in', 'in'],
  ['mm', 'mm'],
];

/** Name of the job, the places, undo and redo, units and files. */
export function TopBar() {
  const name = useDraft(({ draft }) => draft.job.name);
  const unit = useDraft(({ draft }) => draft.job.display);
  const elsewhere = useSessionState((state) => state.elsewhere);
  const { past, future } = useHistory();
  const { write, choose, leave, undo, redo } = useSession().draft.getState();
  const brand = (
    <h1 className={styles.brand}>
      <Mark />
      Nookwright
    </h1>
  );
  const place = usePlace();
  // What somebody shared is no job in hand: nothing of the own job stands over it.
  if (place.name === 'link') {
    return (
      <header className={styles.top} data-shared>
        {brand}
        <a className={styles.away} href={addressOf({ name: 'jobs' })}>
          Your own jobs
        </a>
      </header>
    );
  }
  return (
    <header className={styles.top}>
      {brand}
      <input
        className={styles.jobName}
        aria-label="Name of the job"
        value={name}
        readOnly={elsewhere}
        maxLength={200}
        autoComplete="off"
        size={Math.max(12, name.length)}
        onChange={({ target }) => write(['name'], target.value)}
        onBlur={leave}
      />
      <Places />
      <div className={styles.tools}>
        <button type="button" aria-label="Undo" disabled={elsewhere || past === 0} onClick={undo}>
          <Undo />
          <span className={styles.word}>Undo</span>
        </button>
        <button type="button" aria-label="Redo" disabled={elsewhere || future === 0} onClick={redo}>
          <Redo />
          <span className={styles.word}>Redo</span>
        </button>
        <Segments label="Units" value={unit} choices={units} onChoose={(chosen) => choose(['display'], chosen)} />
        <a
          className={styles.guide}
          aria-label="Guide"
          aria-current={place.name === 'guide' ? 'page' : undefined}
          href={addressOf(guideFor(place))}
        >
          <Question />
          <span className={styles.word}>Guide</span>
        </a>
        <JobMenu />
      </div>
    </header>
  );
}

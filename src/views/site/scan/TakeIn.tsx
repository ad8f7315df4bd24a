import { useState } from 'react';
import { LABEL, type LabelName } from '../../../core';
import { useSession } from '../../../job';
import { Callout } from '../../parts';
import { partNames } from './part-names';
import styles from './scan.module.css';
import { type Sorted, useScan } from './scan-store';
import { takeIntoJob } from './take-into-job';

/** What a survey cannot do without, and the fewest points of each that say something. */
const needed: readonly LabelName[] = ['back', 'left', 'right'];
const fewest = 500;

/** The way of a scan into the job, and what becomes of its points. */
export function TakeIn(sorted: Sorted) {
  const session = useSession();
  const counts = useScan((state) => state.counts);
  const { putAway } = useScan.getState();
  const [keepPoints, setKeepPoints] = useState(true);
  const lacking = needed.filter((part) => (counts[LABEL[part]] ?? 0) < fewest);
  const megabytes = Math.ceil((sorted.positions.byteLength + sorted.labels.byteLength) / 1e6);
  return (
    <>
      {lacking.length > 0 && (
        <Callout weight="warn">
          The scan says little or nothing of the {lacking.map((part) => partNames[part]).join(' and the ')}: measure
          there by hand.
        </Callout>
      )}
      <p className={styles.about}>
        The job takes the walls in small cells, each with its spread, and works them out together with the readings by
        hand. Every file of the job holds the cells; the points themselves stay in this browser alone.
      </p>
      <label className={styles.check}>
        <input type="checkbox" checked={keepPoints} onChange={({ target }) => setKeepPoints(target.checked)} />
        Keep the points here too ({megabytes} MB), so that the scan can be mended later
      </label>
      <div className={styles.row}>
        <button type="button" className={styles.main} onClick={() => void takeIntoJob(session, sorted, keepPoints)}>
          {sorted.id === null ? 'Take it into the job' : 'Put the mended scan in its place'}
        </button>
        <button type="button" onClick={putAway}>
          Put the scan away
        </button>
      </div>
    </>
  );
}

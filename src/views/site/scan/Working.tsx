import { Card } from '../../parts';
import styles from './scan.module.css';
import type { Stage } from './scan-store';

/** What is being done, how far it is, and how to stop it. */
export function Working({ what, share, stop }: Extract<Stage, { at: 'working' }>) {
  return (
    <Card title="Scan of the alcove">
      <p role="status">{what}…</p>
      <div className={styles.progress}>
        <progress value={share} max={1} aria-label={what} />
        <span>{Math.round(100 * share)} %</span>
      </div>
      <button type="button" onClick={stop}>
        Stop
      </button>
    </Card>
  );
}

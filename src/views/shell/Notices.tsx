import { useRef } from 'react';
import { useSession, useSessionState } from '../../job';
import { Callout } from '../parts';
import { ElsewhereNotice, KeepNotice } from './KeepNotice';
import styles from './shell.module.css';
import { UpdateNotice } from './UpdateNotice';
import { useFocusBack } from './useFocusBack';

const faultsShown = 30;

/** What the app has to tell about files, storage and the model, above whatever place one is in. */
export function Notices() {
  const session = useSession();
  const { badFile, failure, unsolved, notice } = useSessionState((state) => state);
  const all = useRef<HTMLDivElement>(null);
  useFocusBack(all);
  return (
    <div ref={all} className={styles.notices}>
      <div aria-live="polite">
        <ElsewhereNotice />
        <UpdateNotice />
        {notice !== null && (
          <Callout weight="plain">
            <div className={styles.notice}>
              <p>{notice}</p>
              <button type="button" onClick={session.dismissNotice}>
                Close
              </button>
            </div>
          </Callout>
        )}
      </div>
      <div role="alert">
        {failure !== null && (
          <Callout weight="bad">
            <div className={styles.notice}>
              <p>{failure}</p>
              {unsolved !== null && (
                <button type="button" onClick={session.workOutAgain}>
                  Work it out again
                </button>
              )}
            </div>
          </Callout>
        )}
        <KeepNotice />
        {badFile !== null && (
          <Callout weight="bad">
            <h2>{badFile.name} was not opened</h2>
            <p>The job in hand is as it was. In the file:</p>
            <ul className={styles.faults} aria-label="Faults in the file">
              {badFile.faults.slice(0, faultsShown).map(({ path, message }) => (
                <li key={`${path} ${message}`}>
                  <code>{path}</code> {message}
                </li>
              ))}
            </ul>
            {badFile.faults.length > faultsShown && <p>and {badFile.faults.length - faultsShown} more</p>}
            <button type="button" onClick={session.dismissBadFile}>
              Close
            </button>
          </Callout>
        )}
      </div>
    </div>
  );
}

import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { useSessionState } from '../../job';
import { Callout } from '../parts';
import styles from './shell.module.css';
import { applyUpdate, type Update, updates } from './updates';

/** Nothing has been typed or pressed for so long, ms. */
const idleAfter = 8000;

/**
 * Offers a newer version while nobody is entering anything; it comes by itself when the app is next started. The page is
 * never loaded again without being asked for, whatever another page does.
 */
export function UpdateNotice() {
  const update = useStore(updates, (state) => state.update);
  const saving = useSessionState(({ keeping }) => keeping === 'writing');
  const [putOff, setPutOff] = useState<Update>('none');
  const offered = update !== putOff;
  const idle = useIdle(offered);
  if (!offered || !idle) return null;
  return (
    <Callout weight="plain">
      <div className={styles.notice}>
        <p>
          {update === 'ready'
            ? 'A newer Nookwright is ready. It takes over when the app is next started, or now.'
            : 'A newer Nookwright was loaded in another tab. This page goes on as it is; load it again when it suits, what is typed stays.'}
        </p>
        <div className={styles.choices}>
          <button type="button" disabled={saving} onClick={applyUpdate}>
            Load it now
          </button>
          <button type="button" onClick={() => setPutOff(update)}>
            Later
          </button>
        </div>
      </div>
    </Callout>
  );
}

/** True once nobody has typed or pressed anything for a while and no field is being entered; then stays. */
function useIdle(waiting: boolean): boolean {
  const [idle, setIdle] = useState(false);
  useEffect(() => {
    if (!waiting || idle) return;
    let timer: ReturnType<typeof setTimeout>;
    const look = () => {
      clearTimeout(timer);
      timer = setTimeout(() => (inAField() ? look() : setIdle(true)), idleAfter);
    };
    look();
    const signs = ['keydown', 'pointerdown', 'focusin'];
    for (const sign of signs) window.addEventListener(sign, look);
    return () => {
      clearTimeout(timer);
      for (const sign of signs) window.removeEventListener(sign, look);
    };
  }, [waiting, idle]);
  return idle;
}

const inAField = () => document.activeElement?.matches('input, textarea, select, [role=dialog] *') ?? false;

import type { ReadingKind } from '../../../core';
import { useSession, useSessionState } from '../../../job';
import { Callout, RemoveButton } from '../../parts';
import styles from '../rows.module.css';
import { SuspectWords } from './SuspectWords';

/** The readings that look wrong. */
export function Advice({ onShow }: { onShow: (id: string, kind: ReadingKind) => void }) {
  const suspects = useSessionState(({ result }) => result?.adjustment.suspects);
  const { choose } = useSession().draft.getState();
  if (!suspects) return null;
  return (
    <div className={styles.advice} data-rows>
      {suspects.map((suspect) => {
        const [reading = suspect.id] = suspect.id.split('/');
        return (
          <Callout key={suspect.id} weight="bad">
            <SuspectWords suspect={suspect} />
            <div className={styles.restRow} data-row>
              <button type="button" onClick={() => onShow(reading, suspect.kind)}>
                Go to {reading}
              </button>
              {suspect.ifOff && (
                <RemoveButton onRemove={() => choose(['readings', reading, 'off'], true)}>Leave it out</RemoveButton>
              )}
            </div>
          </Callout>
        );
      })}
    </div>
  );
}

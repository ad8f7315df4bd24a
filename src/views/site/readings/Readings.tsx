import { useEffect, useState } from 'react';
import type { ReadingKind } from '../../../core';
import { useDraft, useSession } from '../../../job';
import { Card } from '../../parts';
import { AddReading } from './AddReading';
import { Advice } from './Advice';
import { kinds, kindWords } from './kinds';
import { ReadingRow } from './ReadingRow';
import styles from './readings.module.css';

/** All readings, by kind, with what to do next above them. */
export function Readings() {
  const readings = useDraft(({ draft }) => draft.job.readings);
  const { addReading, addAdvised } = useSession().draft.getState();
  const [added, setAdded] = useState<string | null>(null);
  const add = (kind: ReadingKind) => setAdded(addReading(kind));

  useEffect(() => {
    if (added === null) return;
    const row = document.querySelector(`[data-reading="${CSS.escape(added)}"]`);
    row?.scrollIntoView({ block: 'center' });
    row?.querySelector<HTMLInputElement>('input')?.focus({ preventScroll: true });
    setAdded(null);
  }, [added]);

  return (
    <Card title="Readings" aside={<AddReading onAdd={add} />}>
      <Advice onTake={(advice) => setAdded(addAdvised(advice))} />
      {readings.length === 0 && (
        <p>
          No reading yet. Draw a level line and a plumb line on the back wall, then start with the plumb line to each
          corner.
        </p>
      )}
      {kinds
        .filter((kind) => readings.some((reading) => reading.kind === kind))
        .map((kind) => (
          <section key={kind} className={styles.group} aria-label={kindWords[kind].name}>
            <div className={styles.groupHead}>
              <div>
                <h3>{kindWords[kind].name}</h3>
                <p className={styles.how}>{kindWords[kind].how}</p>
              </div>
              <button
                type="button"
                aria-label={`Add another: ${kindWords[kind].name.toLowerCase()}`}
                onClick={() => add(kind)}
              >
                <span aria-hidden="true">+</span>
              </button>
            </div>
            <ul className={styles.list}>
              {readings
                .filter((reading) => reading.kind === kind)
                .map((reading) => (
                  <ReadingRow key={reading.id} reading={reading} />
                ))}
            </ul>
          </section>
        ))}
    </Card>
  );
}

import { useId, useState } from 'react';
import { type DraftReading, useSessionState } from '../../../job';
import { ChevronUp, More } from '../../parts';
import styles from '../rows.module.css';
import { GapTable } from './GapTable';
import { OutcomeLine, WaitingLine } from './OutcomeLine';
import { ReadingRest } from './ReadingRest';
import { RepeatWords } from './RepeatWords';
import { Sentence } from './Sentence';
import { ValueField } from './ValueField';

/** One reading: its sentence, what the adjustment found, and the rest on request. */
export function ReadingRow({ reading }: { reading: DraftReading }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const waiting = useSessionState(({ setAside }) =>
    setAside.some((entry) => entry.list === 'readings' && entry.id === reading.id),
  );
  return (
    <li className={styles.reading} data-off={reading.off || undefined} data-reading={reading.id} data-row>
      <div className={styles.readingHead}>
        <Sentence reading={reading} />
        {reading.kind !== 'plumb' && (
          <span className={styles.value}>
            <ValueField reading={reading} />
          </span>
        )}
      </div>
      {reading.kind === 'plumb' && <GapTable reading={reading} judged={!waiting} />}
      <div className={styles.foot}>
        {waiting && <WaitingLine list="readings" id={reading.id} />}
        {!waiting && reading.kind !== 'plumb' && <OutcomeLine of={reading.id} />}
        <button
          type="button"
          className={styles.more}
          data-takes-focus
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
        >
          <span className="unseen">{`More for ${reading.id}`}</span>
          {open ? <ChevronUp /> : <More />}
        </button>
      </div>
      <RepeatWords reading={reading} />
      {!open && reading.note !== undefined && reading.note !== '' && (
        <p className={styles.note}>Note: {reading.note}</p>
      )}
      <div id={id} hidden={!open} className={styles.rest}>
        {open && <ReadingRest reading={reading} />}
      </div>
    </li>
  );
}

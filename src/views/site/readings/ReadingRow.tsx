import { useId, useState } from 'react';
import { type DraftReading, useSession, useSessionState } from '../../../job';
import { ChoiceField, NumberField } from '../../parts';
import styles from '../rows.module.css';
import { GapTable } from './GapTable';
import { OutcomeLine, WaitingLine } from './OutcomeLine';
import { Sentence } from './Sentence';
import { ValueField } from './ValueField';

const withInstrument = new Set<DraftReading['kind']>([
  'tape-to-corner',
  'tape-to-rim',
  'span',
  'square',
  'diagonal',
  'depth',
]);

/** One reading: its sentence, what the adjustment found, and the rest on request. */
export function ReadingRow({ reading }: { reading: DraftReading }) {
  const [open, setOpen] = useState(false);
  const { choose, write, leave, remove } = useSession().draft.getState();
  const path = ['readings', reading.id] as const;
  const id = useId();
  const waiting = useSessionState(({ setAside }) =>
    setAside.some((entry) => entry.list === 'readings' && entry.id === reading.id),
  );
  return (
    <li className={styles.reading} data-off={reading.off || undefined} data-reading={reading.id}>
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
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
        >
          <span className="unseen">{`More for ${reading.id}`}</span>
          <span aria-hidden="true">{open ? '▴' : '⋯'}</span>
        </button>
      </div>
      {!open && reading.note !== undefined && reading.note !== '' && (
        <p className={styles.note}>Note: {reading.note}</p>
      )}
      <div id={id} hidden={!open} className={styles.rest}>
        {open && (
          <>
            <label className={styles.noteField}>
              Note
              <textarea
                rows={2}
                maxLength={2000}
                value={reading.note ?? ''}
                onChange={({ target }) => write([...path, 'note'], target.value)}
                onBlur={leave}
              />
            </label>
            <div className={styles.restRow}>
              {withInstrument.has(reading.kind) && (
                <ChoiceField
                  label="Taken with"
                  labelShown
                  value={'instrument' in reading ? (reading.instrument ?? 'tape') : 'tape'}
                  choices={[
                    ['tape', 'tape'],
                    ['laser', 'laser'],
                  ]}
                  onChoose={(value) => choose([...path, 'instrument'], value)}
                />
              )}
              <NumberField
                path={[...path, 'sd']}
                label="Own standard deviation"
                labelShown
                optional
                placeholder="usual"
                kind={reading.kind === 'angle' ? 'degrees' : 'length'}
              />
            </div>
            <div className={styles.restRow}>
              <button type="button" onClick={() => choose([...path, 'off'], reading.off ? undefined : true)}>
                {reading.off ? 'Use it again' : 'Leave it out'}
              </button>
              <button type="button" className={styles.remove} onClick={() => remove('readings', reading.id)}>
                Remove
              </button>
            </div>
          </>
        )}
      </div>
    </li>
  );
}

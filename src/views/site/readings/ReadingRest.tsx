import { type DraftReading, useSession } from '../../../job';
import { ChoiceField, NumberField, RemoveButton } from '../../parts';
import styles from '../rows.module.css';

const withInstrument = new Set<DraftReading['kind']>([
  'tape-to-corner',
  'tape-to-rim',
  'span',
  'square',
  'diagonal',
  'depth',
]);

/** What a reading has beside its place and value: a note, its instrument, whether it is used at all. */
export function ReadingRest({ reading }: { reading: DraftReading }) {
  const { choose, write, leave, remove } = useSession().draft.getState();
  const path = ['readings', reading.id] as const;
  return (
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
        <RemoveButton className={styles.remove} onRemove={() => remove('readings', reading.id)}>
          Remove
        </RemoveButton>
      </div>
    </>
  );
}

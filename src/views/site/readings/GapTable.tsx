import { type DraftReadingOf, useSession } from '../../../job';
import { Cross, NumberField, RemoveButton, SidedField } from '../../parts';
import styles from '../rows.module.css';
import { OutcomeLine } from './OutcomeLine';

/** The gaps of a hung line, one row per height. */
export function GapTable({ reading, judged }: { reading: DraftReadingOf<'plumb'>; judged: boolean }) {
  const { addGap, removeGap } = useSession().draft.getState();
  const gaps = reading.gaps ?? [];
  return (
    <div className={styles.gaps} data-rows>
      <p className={styles.gapHead} aria-hidden="true">
        <span>Height from the level line</span>
        <span>Gap</span>
      </p>
      <ol className={styles.gapRows} aria-label="Gaps">
        {gaps.map((_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a gap has no other name than its place
          <li key={i} className={styles.gapRow} data-row>
            <SidedField
              path={['readings', reading.id, 'gaps', i, 'height']}
              label={`height of gap ${i + 1}`}
              sides={['above', 'below']}
            />
            <NumberField path={['readings', reading.id, 'gaps', i, 'value']} label={`gap ${i + 1}`} />
            {judged && <OutcomeLine of={`${reading.id}/${i}`} />}
            <RemoveButton
              className={styles.drop}
              aria-label={`Remove gap ${i + 1}`}
              disabled={gaps.length <= 2}
              onRemove={() => removeGap(reading.id, i)}
            >
              <Cross />
            </RemoveButton>
          </li>
        ))}
      </ol>
      <button type="button" data-adds onClick={() => addGap(reading.id)}>
        Add a height
      </button>
    </div>
  );
}

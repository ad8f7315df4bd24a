import { takenValue } from '../../../core';
import { type DraftReading, useSession } from '../../../job';
import { Cross, RemoveButton, useLengths } from '../../parts';
import styles from '../rows.module.css';

/** What the values of a reading that was taken more than once come to, and each further one to drop. */
export function RepeatWords({ reading }: { reading: DraftReading }) {
  const lengths = useLengths();
  const { removeRepeat } = useSession().draft.getState();
  if (reading.kind === 'plumb' || reading.value === undefined || !reading.repeats?.length) return null;
  const repeats = reading.repeats.map((value) => value ?? 0);
  const { mean, times, spread } = takenValue({ value: reading.value, repeats });
  const words = (value: number) => (reading.kind === 'angle' ? `${value.toFixed(1)}°` : lengths.fine(value));
  return (
    <div className={styles.repeats} data-rows>
      <p>
        Taken {times} times, {words(spread)} apart. The mean is used: <strong>{words(mean)}</strong>.
      </p>
      <ul className={styles.restRow} aria-label="Taken again">
        {repeats.map((value, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a repeat has no other name than its place
          <li key={i} data-row>
            <RemoveButton onRemove={() => removeRepeat(reading.id, i)}>
              {words(value)} <Cross />
              <span className="unseen">: drop it</span>
            </RemoveButton>
          </li>
        ))}
      </ul>
    </div>
  );
}

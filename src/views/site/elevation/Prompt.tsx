import { useSessionState } from '../../../job';
import { useLengths } from '../../parts';
import { gainWords, kindWords } from '../readings';
import { useEntryState, useSurvey, whereWords } from '../survey';
import styles from './elevation.module.css';

/** Which reading to take next, and the way to enter it; what it gains, once the readings are worked out. */
export function Prompt() {
  const { entry, best } = useSurvey();
  const next = useSessionState(({ result, working }) => (working ? null : (result?.adjustment.next ?? null)));
  const active = useEntryState((state) => state.active);
  const lengths = useLengths();
  if (active) return null;
  if (best?.list !== 'readings') {
    return <p className={styles.prompt}>Every reading that helps is taken. Tap one to change it.</p>;
  }
  const isAdvised = next !== null && JSON.stringify(next.reading) === JSON.stringify(best.where);
  return (
    <div className={styles.prompt}>
      <p>
        <strong>Read next: {kindWords[best.where.kind].name.toLowerCase()}</strong>, {whereWords(best.where, lengths)}.{' '}
        {isAdvised && gainWords(next, lengths)}
      </p>
      <button type="button" className={styles.take} onClick={() => entry.getState().open(best)}>
        Enter it
      </button>
    </div>
  );
}

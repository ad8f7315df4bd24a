import { useSessionState } from '../../../job';
import { useLengths } from '../../parts';
import { kindWords } from './kinds';
import { outcomeOf } from './outcome';
import styles from './readings.module.css';

const sign = { bad: '✕', warn: '!', good: '✓', plain: '–' };

/** What the adjustment found about a reading; one line per gap of a hung line. */
export function OutcomeLines({ id }: { id: string }) {
  const adjustment = useSessionState(({ result }) => result?.adjustment);
  const setAside = useSessionState((state) =>
    state.setAside.find((entry) => entry.list === 'readings' && entry.id === id),
  );
  const lengths = useLengths();
  if (setAside) {
    const missing = setAside.faults.every(({ message }) => message === 'needs a value');
    return (
      <p className={styles.outcome} data-weight="warn">
        <span className={styles.outcomeSign} aria-hidden="true">
          !
        </span>
        {missing ? 'Not used yet: fill in what is empty.' : 'Not used yet: put right what is marked.'}
      </p>
    );
  }
  const name = (other: string) => {
    const report = adjustment?.readings.find((each) => each.id === other);
    return report ? `${other} (${kindWords[report.kind].name.toLowerCase()})` : other;
  };
  const reports = adjustment?.readings.filter((report) => report.id === id || report.id.startsWith(`${id}/`)) ?? [];
  return (
    <ul className={styles.outcomes} aria-label="What the adjustment found">
      {reports.map((report) => {
        const { weight, words, detail } = outcomeOf({ report, suspect: adjustment?.suspect ?? null, lengths, name });
        const part = report.id === id ? '' : `gap ${Number(report.id.slice(id.length + 1)) + 1}: `;
        return (
          <li key={report.id} className={styles.outcome} data-weight={weight}>
            <span className={styles.outcomeSign} aria-hidden="true">
              {sign[weight]}
            </span>
            <span>
              <strong>
                {part}
                {words}
              </strong>
              {detail !== null && <span className={styles.detail}> · {detail}</span>}
            </span>
          </li>
        );
      })}
    </ul>
  );
}

import type { ReactNode } from 'react';
import { type SetAside, useSessionState } from '../../../job';
import { Attention, Cross, Minus, Tick, useLengths, type Weight } from '../../parts';
import styles from '../rows.module.css';
import { kindWords } from './kinds';
import { outcomeOf } from './outcome';

const signs: Record<Weight, () => ReactNode> = { bad: Cross, warn: Attention, good: Tick, plain: Minus };

/**
 * What the adjustment found about a reading or one gap of a hung line.
 * @param of id of the row in the adjustment's report
 */
export function OutcomeLine({ of }: { of: string }) {
  const adjustment = useSessionState(({ result }) => result?.adjustment);
  const lengths = useLengths();
  const report = adjustment?.readings.find(({ id }) => id === of);
  if (!adjustment || !report) return null;
  const name = (other: string) => {
    const found = adjustment.readings.find(({ id }) => id === other);
    return found ? `${other} (${kindWords[found.kind].name.toLowerCase()})` : other;
  };
  const { weight, words, detail } = outcomeOf({ report, suspects: adjustment.suspects, lengths, name });
  return (
    <Line id={of.includes('/') ? null : of} weight={weight}>
      <strong>{words}</strong>
      {detail !== null && <span className={styles.detail}> · {detail}</span>}
    </Line>
  );
}

/** Says that a reading or fixture waits for what is missing; nothing where it is complete. */
export function WaitingLine({ list, id }: { list: SetAside['list']; id: string }) {
  const waiting = useSessionState(({ setAside }) => setAside.find((entry) => entry.list === list && entry.id === id));
  if (!waiting) return null;
  const missing = waiting.faults.every(({ message }) => message === 'needs a value');
  return (
    <Line id={id} weight="warn">
      <strong>{missing ? 'Not used yet: fill in what is empty.' : 'Not used yet: put right what is marked.'}</strong>
    </Line>
  );
}

function Line({ id, weight, children }: { id: string | null; weight: Weight; children: ReactNode }) {
  const Sign = signs[weight];
  return (
    <p className={styles.outcome} data-weight={weight}>
      <span className={styles.outcomeSign} aria-hidden="true">
        <Sign />
      </span>
      <span>
        {id !== null && <span className={styles.id}>{id}: </span>}
        {children}
      </span>
    </p>
  );
}

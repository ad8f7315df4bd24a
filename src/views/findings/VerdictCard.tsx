import { type ReactNode, useId } from 'react';
import type { PlaceVerdict, Verdict } from '../../core';
import { verdictWords } from '../../output';
import { Cross, Tick, Warning, Wave } from '../parts';
import styles from './verdicts.module.css';

const signs: Record<Verdict, () => ReactNode> = { fits: Tick, scribe: Wave, prepare: Warning, hold: Cross };

/** What a wall, corner or rim asks for before its panel, in words, with a sign and a pattern beside the colour. */
export function VerdictCard({ title, verdict: { verdict, because } }: { title: string; verdict: PlaceVerdict }) {
  const id = useId();
  const Sign = signs[verdict];
  return (
    <section className={styles.verdict} data-verdict={verdict} aria-labelledby={id}>
      <h3 id={id}>
        {title}: <strong>{verdictWords[verdict].toLowerCase()}</strong>
      </h3>
      <span className={styles.sign} aria-hidden="true">
        <Sign />
      </span>
      <ul>
        {because.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );
}

import type { ReactNode } from 'react';
import { Attention, Cross, Info, Tick } from './icons';
import styles from './parts.module.css';

export type Weight = 'bad' | 'warn' | 'good' | 'plain';

const signs: Record<Weight, () => ReactNode> = { bad: Cross, warn: Attention, good: Tick, plain: Info };
const word: Record<Weight, string> = { bad: 'Problem', warn: 'Attention', good: 'Good', plain: 'Note' };

/** A sentence that matters, with a sign for its weight beside the colour. */
export function Callout({ weight, children }: { weight: Weight; children: ReactNode }) {
  const Sign = signs[weight];
  return (
    <div className={styles.callout} data-weight={weight}>
      <span className={styles.calloutSign} role="img" aria-label={word[weight]}>
        <Sign />
      </span>
      <div className={styles.calloutText}>{children}</div>
    </div>
  );
}

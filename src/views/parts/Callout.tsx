import type { ReactNode } from 'react';
import styles from './parts.module.css';

export type Weight = 'bad' | 'warn' | 'good' | 'plain';

const sign: Record<Weight, string> = { bad: '✕', warn: '!', good: '✓', plain: 'i' };
const word: Record<Weight, string> = { bad: 'Problem', warn: 'Attention', good: 'Good', plain: 'Note' };

/** A sentence that matters, with a sign for its weight beside the colour. */
export function Callout({ weight, children }: { weight: Weight; children: ReactNode }) {
  return (
    <div className={styles.callout} data-weight={weight}>
      <span className={styles.calloutSign} role="img" aria-label={word[weight]}>
        {sign[weight]}
      </span>
      <div className={styles.calloutText}>{children}</div>
    </div>
  );
}

import type { ReactNode } from 'react';
import styles from './scale-bar.module.css';

interface ScaleBarProps {
  /** the whole scale in one sentence */
  label: string;
  /** what its two ends mean */
  ends: readonly [ReactNode, ReactNode];
  /** CSS gradient from end to end */
  colours: string;
  /** a line for each contour, with its figure where there is room for it */
  ticks: readonly { at: number; text: string | null }[];
  /** what the hatch means */
  hatched: string;
}

/** Colours and their figures, a tick for each contour line, and what the hatch means. */
export function ScaleBar({ label, ends, colours, ticks, hatched }: ScaleBarProps) {
  return (
    <figure className={styles.legend} aria-label={label}>
      <div className={styles.ends} aria-hidden="true">
        <span>{ends[0]}</span>
        <span>{ends[1]}</span>
      </div>
      <div className={styles.colours} style={{ background: colours }} />
      <ol className={styles.ticks} aria-hidden="true">
        {ticks.map(({ at, text }) => (
          <li key={at} data-zero={at === 0 || undefined}>
            {text !== null && <span>{text}</span>}
          </li>
        ))}
      </ol>
      <p className={styles.key} aria-hidden="true">
        <span className={styles.hatch} /> {hatched}
      </p>
    </figure>
  );
}

/** Ticks from contour to contour; figures at the ends, half-way and at none alone where there are many. */
export function ticksOf(from: number, count: number, textOf: (tick: number) => string): ScaleBarProps['ticks'] {
  const every = count > 3 ? Math.ceil(count / 2) : 1;
  return Array.from({ length: count - from + 1 }, (_, i) => {
    const at = from + i;
    return { at, text: Math.abs(at) % every === 0 || Math.abs(at) === count ? textOf(at) : null };
  });
}

import { scaleGradient } from '../../scene';
import { ArrowLeft, ArrowRight, type Lengths } from '../parts';
import styles from './heat.module.css';

interface LegendProps {
  /** mm at either end */
  range: number;
  step: number;
  lengths: Lengths;
}

/** Colours and their figures, a tick for each contour line, and what the hatch means. */
export function Legend({ range, step, lengths }: LegendProps) {
  const count = Math.round(range / step);
  const ticks = Array.from({ length: 2 * count + 1 }, (_, i) => i - count);
  // figures at true, half-way and at the ends alone where there are many
  const every = count > 3 ? Math.ceil(count / 2) : 1;
  const text = (tick: number) =>
    tick === 0 ? 'true' : `${tick > 0 ? '+' : '−'}${lengths.fine(Math.abs(tick) * step)}`;
  return (
    <figure
      className={styles.legend}
      aria-label={`Scale: ${lengths.fine(range)} either way, a line each ${lengths.fine(step)}; hatched where assumed, or where the ± is wider than a step`}
    >
      <div className={styles.ends} aria-hidden="true">
        <span>
          <ArrowLeft /> away from the room
        </span>
        <span>
          into the room <ArrowRight />
        </span>
      </div>
      <div className={styles.colours} style={{ background: scaleGradient('to right') }} />
      <ol className={styles.ticks} aria-hidden="true">
        {ticks.map((tick) => (
          <li key={tick} data-zero={tick === 0 || undefined}>
            {(Math.abs(tick) % every === 0 || Math.abs(tick) === count) && <span>{text(tick)}</span>}
          </li>
        ))}
      </ol>
      <p className={styles.key} aria-hidden="true">
        <span className={styles.hatch} /> assumed, or ± wider than a step
      </p>
    </figure>
  );
}

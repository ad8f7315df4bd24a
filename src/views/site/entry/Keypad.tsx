import type { DisplayUnit } from '../../../core';
import { ChevronRight, Rubout } from '../../parts';
import styles from './entry.module.css';
import { fractionOf, type Key } from './press';

interface KeypadProps {
  /** null where the number has no unit of length */
  unit: DisplayUnit | null;
  /** what is entered, which shows on the keys of its fraction */
  text: string;
  onKey: (key: Key) => void;
  onSkip: () => void;
  onNext: () => void;
}

/** Rows of digits as on a pocket calculator. */
const rows = [
  ['7', '8', '9'],
  ['4', '5', '6'],
  ['1', '2', '3'],
];

/** The fraction that so many sixteenths come to, in lowest terms. */
function reduced(sixteenths: number): { above: number; below: number } {
  let [above, below] = [sixteenths, 16];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  return { above, below };
}

/** Large keys for wet hands: digits, and for inches the sixteenths as one tap each. They leave the focus where it is. */
export function Keypad({ unit, text, onKey, onSkip, onNext }: KeypadProps) {
  const down = unit === 'in' ? fractionOf(text) : null;
  return (
    <fieldset className={styles.keypad} data-unit={unit ?? 'plain'} onMouseDown={(event) => event.preventDefault()}>
      <legend className="unseen">Keys</legend>
      <div className={styles.digits}>
        {rows.flat().map((digit) => (
          <button key={digit} type="button" className={styles.digit} onClick={() => onKey({ digit })}>
            {digit}
          </button>
        ))}
        <button type="button" className={styles.digit} aria-label="point" onClick={() => onKey('point')}>
          .
        </button>
        <button type="button" className={styles.digit} onClick={() => onKey({ digit: '0' })}>
          0
        </button>
        <button type="button" className={styles.edit} aria-label="Take back the last key" onClick={() => onKey('back')}>
          <Rubout />
        </button>
      </div>
      {unit === 'in' && (
        <div className={styles.fractions}>
          {Array.from({ length: 15 }, (_, i) => i + 1).map((sixteenths) => {
            const { above, below } = reduced(sixteenths);
            return (
              <button
                key={sixteenths}
                type="button"
                className={styles.fraction}
                data-below={below}
                aria-label={`${above}/${below}`}
                aria-pressed={down?.sixteenths === sixteenths}
                onClick={() => onKey({ sixteenths })}
              >
                <span>
                  <span className={styles.above}>{above}</span>
                  <span className={styles.below}>/{below}</span>
                </span>
              </button>
            );
          })}
          <button
            type="button"
            className={styles.fraction}
            data-below={32}
            aria-label="and 1/32"
            aria-pressed={down?.half ?? false}
            onClick={() => onKey('half-step')}
          >
            <span>
              <span className={styles.above}>+1</span>
              <span className={styles.below}>/32</span>
            </span>
          </button>
        </div>
      )}
      <div className={styles.actions}>
        <button type="button" className={styles.edit} onClick={() => onKey('clear')}>
          Clear
        </button>
        <button type="button" className={styles.edit} onClick={onSkip}>
          Skip
        </button>
        <button type="button" className={styles.next} onClick={onNext}>
          Next <ChevronRight />
        </button>
      </div>
    </fieldset>
  );
}

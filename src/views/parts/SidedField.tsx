import { useId } from 'react';
import type { FieldPath } from '../../job';
import { Swap } from './icons';
import { moveOn } from './moveOn';
import styles from './parts.module.css';
import { useEntry, withoutMinus } from './useEntry';
import { useLengths } from './useLengths';

export interface SidedFieldProps {
  path: FieldPath;
  label: string;
  /** words for a positive and a negative value, such as above and below */
  sides: readonly [positive: string, negative: string];
}

/** A length to one side or the other of a line: the figure, and a button that says which side and turns it over. */
export function SidedField({ path, label, sides }: SidedFieldProps) {
  const id = useId();
  const { text, fault, onEnter, onText, onLeave, onTurn } = useEntry(path, 'length');
  const { unit } = useLengths();
  const magnitude = withoutMinus(text);
  const negative = magnitude !== null;
  const [here, there] = negative ? [sides[1], sides[0]] : sides;
  return (
    <span className={styles.field}>
      <label htmlFor={id} className="unseen">
        {label}
      </label>
      <span className={styles.fieldBox}>
        <input
          id={id}
          className={styles.number}
          value={magnitude ?? text}
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="next"
          aria-invalid={fault !== null}
          aria-describedby={`${id}-side${fault === null ? '' : ` ${id}-fault`}`}
          onChange={({ target }) =>
            onText(negative && withoutMinus(target.value) === null ? `-${target.value}` : target.value)
          }
          data-entry
          onKeyDown={moveOn}
          onFocus={onEnter}
          onBlur={onLeave}
        />
        <span className={styles.mark} aria-hidden="true">
          {unit}
        </span>
        <button type="button" className={styles.side} aria-label={`${here}; change to ${there}`} onClick={onTurn}>
          <span id={`${id}-side`}>{here}</span>
          <Swap />
        </button>
      </span>
      {fault !== null && (
        <span id={`${id}-fault`} className={styles.fault}>
          {fault}
        </span>
      )}
    </span>
  );
}

import { useId } from 'react';
import type { FieldPath } from '../../job';
import { EntryField } from './EntryField';
import { Swap } from './icons';
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
  const entry = useEntry(path, 'length');
  const { text, onText, onTurn } = entry;
  const { unit } = useLengths();
  const magnitude = withoutMinus(text);
  const negative = magnitude !== null;
  const [here, there] = negative ? [sides[1], sides[0]] : sides;
  return (
    <EntryField
      id={id}
      entry={entry}
      label={label}
      value={magnitude ?? text}
      describedBy={`${id}-side`}
      mark={unit}
      onText={(typed) => onText(negative && withoutMinus(typed) === null ? `-${typed}` : typed)}
    >
      <button type="button" className={styles.side} aria-label={`${here}; change to ${there}`} onClick={onTurn}>
        <span id={`${id}-side`}>{here}</span>
        <Swap />
      </button>
    </EntryField>
  );
}

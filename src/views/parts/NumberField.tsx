import { useId } from 'react';
import { type EntryKind, type FieldPath, useDraft } from '../../job';
import { moveOn } from './moveOn';
import styles from './parts.module.css';
import { useEntry } from './useEntry';
import { useLengths } from './useLengths';

export interface NumberFieldProps {
  path: FieldPath;
  /** what the field is, for those who do not see where it stands */
  label: string;
  kind?: EntryKind;
  /** unit of a `number`, written after it */
  unit?: string;
  optional?: boolean;
  /** what applies while an optional field is empty */
  placeholder?: string;
  labelShown?: boolean;
}

const slopeMark = { in: 'in/ft', mm: 'mm/m' };

/** A field for a length, an angle or a plain number. */
export function NumberField({
  path,
  label,
  kind = 'length',
  unit,
  optional = false,
  placeholder,
  labelShown = false,
}: NumberFieldProps) {
  const id = useId();
  const { text, fault, onEnter, onText, onLeave } = useEntry(path, kind, optional);
  const lengths = useLengths();
  const currency = useDraft(({ draft }) => draft.job.prices.currency);
  const marks: Record<EntryKind, string | undefined> = {
    length: lengths.unit,
    degrees: '°',
    slope: slopeMark[lengths.unit],
    money: currency,
    'money-by-length': `${currency}/${lengths.unit === 'in' ? 'ft' : 'm'}`,
    percent: '%',
    number: unit,
  };
  const mark = marks[kind];
  return (
    <span className={styles.field} data-stacked={labelShown || undefined}>
      <label htmlFor={id} className={labelShown ? styles.fieldLabel : 'unseen'}>
        {label}
      </label>
      <span className={styles.fieldBox}>
        <input
          id={id}
          className={styles.number}
          value={text}
          placeholder={placeholder}
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="next"
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          onChange={({ target }) => onText(target.value)}
          data-entry
          onKeyDown={moveOn}
          onFocus={onEnter}
          onBlur={onLeave}
        />
        {mark && (
          <span className={styles.mark} aria-hidden="true">
            {mark}
          </span>
        )}
      </span>
      {fault !== null && (
        <span id={`${id}-fault`} className={styles.fault}>
          {fault}
        </span>
      )}
    </span>
  );
}

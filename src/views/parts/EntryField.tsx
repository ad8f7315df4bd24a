import type { ReactNode } from 'react';
import { moveOn } from './moveOn';
import styles from './parts.module.css';
import type { EntryState } from './useEntry';

interface EntryFieldProps {
  /** of the input; its fault and whatever else describes it have ids that begin with it */
  id: string;
  entry: EntryState;
  label: string;
  labelShown?: boolean;
  /** the text that stands in the field */
  value: string;
  placeholder?: string | undefined;
  /** id of what describes the field besides its fault */
  describedBy?: string;
  /** unit behind the field */
  mark: string | undefined;
  onText(text: string): void;
  /** what stands in the box behind the unit */
  children?: ReactNode;
}

/** The look and behaviour of every field that takes a number as text: label, input, unit and fault. */
export function EntryField({
  id,
  entry: { fault, onEnter, onLeave },
  label,
  labelShown = false,
  value,
  placeholder,
  describedBy,
  mark,
  onText,
  children,
}: EntryFieldProps) {
  const describing = [describedBy, fault === null ? undefined : `${id}-fault`].filter((each) => each !== undefined);
  return (
    <span className={styles.field} data-stacked={labelShown || undefined}>
      <label htmlFor={id} className={labelShown ? styles.fieldLabel : 'unseen'}>
        {label}
      </label>
      <span className={styles.fieldBox}>
        <input
          id={id}
          className={styles.number}
          value={value}
          placeholder={placeholder}
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="next"
          aria-invalid={fault !== null}
          aria-describedby={describing.join(' ') || undefined}
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
        {children}
      </span>
      {fault !== null && (
        <span id={`${id}-fault`} className={styles.fault}>
          {fault}
        </span>
      )}
    </span>
  );
}

import { useId } from 'react';
import styles from './parts.module.css';

export interface ChoiceFieldProps<T extends string> {
  label: string;
  labelShown?: boolean;
  value: T | undefined;
  choices: readonly (readonly [value: T, words: string])[];
  onChoose: (value: T) => void;
}

/** One of a few choices. */
export function ChoiceField<T extends string>({
  label,
  labelShown = false,
  value,
  choices,
  onChoose,
}: ChoiceFieldProps<T>) {
  const id = useId();
  return (
    <span className={styles.field} data-stacked={labelShown || undefined}>
      <label htmlFor={id} className={labelShown ? styles.fieldLabel : 'unseen'}>
        {label}
      </label>
      <select id={id} value={value ?? ''} onChange={({ target }) => onChoose(target.value as T)}>
        {value === undefined && (
          <option value="" disabled>
            choose
          </option>
        )}
        {choices.map(([choice, words]) => (
          <option key={choice} value={choice}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}

import { useId } from 'react';
import { type FieldPath, useDraft, useSession, valueAt } from '../../job';
import styles from './parts.module.css';

/** A day of the calendar, which may be left open. */
export function DateField({ path, label }: { path: FieldPath; label: string }) {
  const id = useId();
  const value = useDraft(({ draft }) => valueAt(draft.job, path)) as string | undefined;
  const { write, choose, leave } = useSession().draft.getState();
  return (
    <span className={styles.field} data-stacked>
      <label htmlFor={id} className={styles.fieldLabel}>
        {label}
      </label>
      <input
        id={id}
        type="date"
        min="2000-01-01"
        max="2099-12-31"
        value={value ?? ''}
        onChange={({ target }) => (target.value === '' ? choose(path, undefined) : write(path, target.value))}
        onBlur={leave}
      />
    </span>
  );
}

import { useId } from 'react';
import { type FieldPath, useDraft, useSession, valueAt } from '../../job';
import styles from './client.module.css';

/** A colour of the finish, chosen as the browser lets one choose. */
export function ColourField({ path, label }: { path: FieldPath; label: string }) {
  const id = useId();
  const colour = useDraft(({ draft }) => valueAt(draft.job, path)) as string;
  const { choose } = useSession().draft.getState();
  return (
    <span className={styles.colour}>
      <label htmlFor={id}>{label}</label>
      <input id={id} type="color" value={colour} onChange={({ target }) => choose(path, target.value)} />
    </span>
  );
}

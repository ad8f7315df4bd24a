import { useId } from 'react';
import styles from './parts.module.css';

/** A thing that is on or off. */
export function Switch({ label, on, onChange }: { label: string; on: boolean; onChange: (on: boolean) => void }) {
  const id = useId();
  return (
    <label htmlFor={id} className={styles.switch}>
      <input id={id} type="checkbox" checked={on} onChange={({ target }) => onChange(target.checked)} />
      {label}
    </label>
  );
}

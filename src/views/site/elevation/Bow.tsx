import styles from './elevation.module.css';

/** A straightedge with the wall behind it: bowed away for a hollow, towards it for a hump. */
export function Bow({ hollow }: { hollow: boolean }) {
  return (
    <svg className={styles.bow} viewBox="0 0 14 12" aria-hidden="true">
      <path d="M1 3H13" />
      <path d={hollow ? 'M1 3Q7 14 13 3' : 'M1 9Q7 0 13 9'} />
    </svg>
  );
}

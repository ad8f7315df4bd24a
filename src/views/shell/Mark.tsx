import styles from './shell.module.css';

/** The app's sign: a level line crossed by a plumb line with its bob. */
export function Mark() {
  return (
    <svg
      className={styles.markSign}
      viewBox="0 0 32 32"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.5"
    >
      <path d="M2 11h28" strokeDasharray="11 2.5" />
      <path d="M16 2v19" />
      <path d="M12.5 20.5h7L16 30z" fill="currentColor" strokeLinejoin="round" />
    </svg>
  );
}

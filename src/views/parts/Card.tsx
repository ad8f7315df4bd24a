import { type ReactNode, useId } from 'react';
import styles from './parts.module.css';

interface CardProps {
  title: string;
  aside?: ReactNode;
  children: ReactNode;
  level?: 2 | 3;
  /** its rows can be taken out (`handFocusOn`) */
  rows?: boolean;
  /** it is such a row itself */
  row?: boolean;
}

/** A part of a page with its heading. */
export function Card({ title, aside, children, level = 2, rows = false, row = false }: CardProps) {
  const id = useId();
  const Heading = `h${level}` as const;
  return (
    <section className={styles.card} aria-labelledby={id} data-rows={rows || undefined} data-row={row || undefined}>
      <div className={styles.cardHead}>
        <Heading id={id}>{title}</Heading>
        {aside}
      </div>
      {children}
    </section>
  );
}

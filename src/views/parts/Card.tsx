import { type ReactNode, useId } from 'react';
import styles from './parts.module.css';

interface CardProps {
  title: string;
  aside?: ReactNode;
  children: ReactNode;
  level?: 2 | 3;
}

/** A part of a page with its heading. */
export function Card({ title, aside, children, level = 2 }: CardProps) {
  const id = useId();
  const Heading = `h${level}` as const;
  return (
    <section className={styles.card} aria-labelledby={id}>
      <div className={styles.cardHead}>
        <Heading id={id}>{title}</Heading>
        {aside}
      </div>
      {children}
    </section>
  );
}

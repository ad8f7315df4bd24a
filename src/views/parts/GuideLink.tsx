import type { ReactNode } from 'react';
import { addressOf, type Place } from '../place';
import { Question } from './icons';
import styles from './parts.module.css';

/** A quiet way to the place in the guide that tells more. */
export function GuideLink({
  page,
  section,
  children,
}: Pick<Extract<Place, { name: 'guide' }>, 'page' | 'section'> & { children: ReactNode }) {
  return (
    <a className={styles.guideLink} href={addressOf({ name: 'guide', page, section })}>
      <Question />
      {children}
    </a>
  );
}

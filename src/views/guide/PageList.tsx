import { guidePages, pageNames } from '../../guide';
import { addressOf, type GuideName } from '../place';
import styles from './guide.module.css';

/** The way between the pages of the guide. */
export function PageList({ here }: { here: GuideName }) {
  const list = (user: boolean) => (
    <ul>
      {pageNames
        .filter((name) => guidePages[name].user === user)
        .map((name) => (
          <li key={name}>
            <a
              href={addressOf({ name: 'guide', page: name, section: null })}
              aria-current={name === here ? 'page' : undefined}
            >
              {guidePages[name].words}
            </a>
          </li>
        ))}
    </ul>
  );
  return (
    <nav className={styles.pages} aria-label="Pages of the guide">
      {list(true)}
      {list(false)}
    </nav>
  );
}

import type { Page } from '../../guide';
import { addressOf, type GuideName } from '../place';
import styles from './guide.module.css';

/** What is on a page. */
export function Contents({ page, contents }: { page: GuideName; contents: Page['contents'] }) {
  return (
    <details className={styles.contents} open={window.matchMedia('(min-width: 1000px)').matches}>
      <summary>On this page</summary>
      <ul>
        {contents
          .filter(({ level }) => level === 2)
          .map(({ id, words }) => (
            <li key={id}>
              <a href={addressOf({ name: 'guide', page, section: id.slice(page.length + 1) })}>{words}</a>
            </li>
          ))}
      </ul>
    </details>
  );
}

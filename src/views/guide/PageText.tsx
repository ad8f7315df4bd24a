import { useEffect, useRef } from 'react';
import styles from './guide.module.css';

/** A page as it was set when the app was built; the markup is our own text and holds nothing that anybody typed. */
export function PageText({ html }: { html: string }) {
  const article = useRef<HTMLElement>(null);
  useEffect(() => {
    const element = article.current;
    if (!element) return;
    const watcher = new ResizeObserver(() => reachable(element));
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: made when the app is built, from files in src/guide alone
  return <article ref={article} className={styles.page} dangerouslySetInnerHTML={{ __html: html }} />;
}

/** What is wider than the page scrolls by itself; only then can it be reached by keyboard. */
function reachable(article: HTMLElement): void {
  for (const wide of article.querySelectorAll<HTMLElement>('[data-wide]')) {
    if (wide.scrollWidth > wide.clientWidth) {
      wide.tabIndex = 0;
      wide.setAttribute('role', 'group');
      wide.setAttribute(
        'aria-label',
        wide.dataset.wide === 'table' ? 'Table, scrolls sideways' : 'Formula, scrolls sideways',
      );
    } else {
      for (const name of ['tabindex', 'role', 'aria-label']) wide.removeAttribute(name);
    }
  }
}

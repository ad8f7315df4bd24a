import { useEffect, useState } from 'react';
import { guidePages, type Page, type PageName, pageNames } from '../../guide';
import { addressOf, type GuideName } from '../place';
import { Contents } from './Contents';
import styles from './guide.module.css';
import { PageList } from './PageList';
import { PageText } from './PageText';

/** The pages shown at an address: one, or the user's guide as a whole. */
const shownAt = (page: GuideName): PageName[] =>
  page === 'all' ? pageNames.filter((each) => guidePages[each].user) : [page];

/** The guide: a page of it, or all that is for the user, to be read here or printed. */
export function Guide({ page, section }: { page: GuideName; section: string | null }) {
  const { pages, failed } = usePages(page);
  useEffect(() => {
    if (!pages) return;
    document.title = `${page === 'all' ? 'Guide' : pages[0]!.title} · Nookwright`;
    const place = section && document.getElementById(`${page}.${section}`);
    if (!place) {
      window.scrollTo(0, 0);
      return;
    }
    place.scrollIntoView();
    place.focus({ preventScroll: true });
  }, [pages, page, section]);
  return (
    <div className={styles.guide}>
      <div className={styles.side}>
        <PageList here={page} />
        {pages?.length === 1 && <Contents page={page} contents={pages[0]!.contents} />}
      </div>
      <div className={styles.text}>
        {failed && <p role="alert">This page could not be loaded. Check the connection and open it again.</p>}
        {!pages && !failed && <p>Loading…</p>}
        {pages?.map(({ title, html }) => (
          <PageText key={title} html={html} />
        ))}
        {pages && (
          <p className={styles.printing}>
            <button type="button" onClick={() => window.print()}>
              {page === 'all' ? 'Print the guide' : 'Print this page'}
            </button>
            {page !== 'all' && guidePages[page].user && (
              <a className={styles.whole} href={addressOf({ name: 'guide', page: 'all', section: null })}>
                The whole guide, to print
              </a>
            )}
          </p>
        )}
      </div>
    </div>
  );
}

function usePages(page: GuideName): { pages: Page[] | null; failed: boolean } {
  const [loaded, setLoaded] = useState<{ page: GuideName; pages: Page[] | null } | null>(null);
  useEffect(() => {
    let left = false;
    Promise.all(shownAt(page).map((name) => guidePages[name].load())).then(
      (pages) => left || setLoaded({ page, pages }),
      () => left || setLoaded({ page, pages: null }),
    );
    return () => {
      left = true;
    };
  }, [page]);
  const now = loaded?.page === page ? loaded : null;
  return { pages: now?.pages ?? null, failed: now !== null && now.pages === null };
}

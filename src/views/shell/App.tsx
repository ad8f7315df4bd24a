import { Suspense, useEffect, useRef } from 'react';
import { type Session, SessionProvider, useDraft, useSessionState } from '../../job';
import { Jobs } from '../jobs';
import { loaded, loadedSoon, PartBoundary } from '../parts';
import { type Place, usePlace } from '../place';
import { Site } from '../site';
import { Notices } from './Notices';
import './global.css';
import styles from './shell.module.css';
import { TopBar } from './TopBar';
import { useUndoKeys } from './useUndoKeys';

const titles: Record<Place['name'], string> = {
  site: 'Site',
  bench: 'Bench',
  van: 'Van',
  jobs: 'All jobs',
  client: 'Client',
  guide: 'Guide',
  link: 'A shared job',
};

const Bench = loadedSoon(() => import('../bench').then(({ Bench }) => Bench));
const Van = loadedSoon(() => import('../van').then(({ Van }) => Van));
const Client = loaded(() => import('../client').then(({ Client }) => Client));
const Guide = loadedSoon(() => import('../guide').then(({ Guide }) => Guide));
const Shared = loaded(() => import('../client').then(({ Shared }) => Shared));

export function App({ session }: { session: Session }) {
  return (
    <SessionProvider session={session}>
      <Shell />
    </SessionProvider>
  );
}

function Shell() {
  const place = usePlace();
  const id = useDraft(({ draft }) => draft.id);
  const elsewhere = useSessionState((state) => state.elsewhere);
  const main = useRef<HTMLElement>(null);
  useUndoKeys();
  useEffect(() => {
    // A page of the guide has a title and a place of its own.
    if (place.name === 'guide') return;
    document.title = `${titles[place.name]} · Nookwright`;
    window.scrollTo(0, 0);
  }, [place.name]);
  return (
    <>
      <a className={styles.skip} href={window.location.hash} onClick={() => main.current?.focus()}>
        Skip to the content
      </a>
      <TopBar />
      <Notices />
      <main ref={main} tabIndex={-1} className={styles.main}>
        {place.name === 'jobs' && (
          <Suspense fallback={<p>Looking for the jobs…</p>}>
            <Jobs />
          </Suspense>
        )}
        <div key={id} inert={elsewhere}>
          {place.name === 'site' && (
            <PartBoundary>
              <Site part={place.part} />
            </PartBoundary>
          )}
          {place.name === 'bench' && (
            <Suspense fallback={<p>Loading…</p>}>
              <Bench item={place.item} />
            </Suspense>
          )}
          {place.name === 'van' && (
            <Suspense fallback={<p>Loading…</p>}>
              <Van part={place.part} />
            </Suspense>
          )}
          {place.name === 'client' && (
            <Suspense fallback={<p>Loading…</p>}>
              <Client part={place.part} />
            </Suspense>
          )}
        </div>
        {place.name === 'guide' && (
          <Suspense fallback={<p>Loading…</p>}>
            <Guide page={place.page} section={place.section} />
          </Suspense>
        )}
        {place.name === 'link' && (
          <Suspense fallback={<p>Loading…</p>}>
            <Shared link={place.text} />
          </Suspense>
        )}
      </main>
    </>
  );
}

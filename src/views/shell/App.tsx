import { useEffect, useRef } from 'react';
import { type Session, SessionProvider } from '../../job';
import { Bench } from '../bench';
import { usePlace } from '../place';
import { Site } from '../site';
import { Notices } from './Notices';
import './global.css';
import styles from './shell.module.css';
import { TopBar } from './TopBar';
import { useUndoKeys } from './useUndoKeys';

export function App({ session }: { session: Session }) {
  return (
    <SessionProvider session={session}>
      <Shell />
    </SessionProvider>
  );
}

function Shell() {
  const place = usePlace();
  const main = useRef<HTMLElement>(null);
  useUndoKeys();
  useEffect(() => {
    document.title = `${place.name === 'site' ? 'Site' : 'Bench'} · Nookwright`;
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
        {place.name === 'site' ? <Site part={place.part} /> : <Bench panel={place.panel} />}
      </main>
    </>
  );
}

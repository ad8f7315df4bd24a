import { useEffect, useState } from 'react';
import type { Job, Result } from '../../core';
import { useSession } from '../../job';
import { loadSharing, type QrCode, type ShareOptions } from '../../output';
import { Callout, Card, Switch } from '../parts';
import styles from './client.module.css';
import { linkLengthWords } from './link-length';
import { linkTo } from './link-to';

interface Made {
  /** null where nothing need be said of its length */
  length: ReturnType<typeof linkLengthWords>;
  address: string;
  code: QrCode;
  svg: string;
}

/** A link that carries the job, with what it holds stated, and its code for a phone's camera. */
export function Send({ job }: { job: Job; result: Result }) {
  const { tell } = useSession();
  const [options, setOptions] = useState<ShareOptions>({ prices: false, client: false, notes: false });
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    let gone = false;
    loadSharing().then(
      ({ writeLink, qrCode, qrSvg, MOST_CHARACTERS }) => {
        if (gone) return;
        const link = writeLink(job, options);
        const address = linkTo(link);
        const code = qrCode(address);
        const length = linkLengthWords(link.length, MOST_CHARACTERS, job.scans.length > 0);
        setMade({ address, length, code, svg: code.ok ? qrSvg(code) : '' });
      },
      () => gone || tell('What makes links could not be loaded. Load this page again.'),
    );
    return () => {
      gone = true;
    };
  }, [job, options, tell]);
  const copy = async () => {
    if (!made) return;
    try {
      await navigator.clipboard.writeText(made.address);
      tell('The link is copied.');
    } catch {
      tell('The browser did not let the link be copied. Select it in the field and copy it from there.');
    }
  };
  const share = async () => {
    if (!made) return;
    try {
      await navigator.share({ title: job.name, url: made.address });
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'AbortError'))
        tell('The link could not be handed on. Copy it instead.');
    }
  };
  const kilobytes = made ? (made.address.length / 1024).toFixed(1) : '';
  return (
    <div className={styles.look}>
      <Card title="A link to keep">
        <p>
          The link holds the job itself, after the sign #, which browsers keep to themselves: no server sees it. Whoever
          has the link can read what is in it: the readings, the panels, the finish, the name of the job “{job.name}”.
        </p>
        <div className={styles.switches}>
          <Switch label="With prices" on={options.prices} onChange={(prices) => setOptions({ ...options, prices })} />
          <Switch
            label="With the names on the quote"
            on={options.client}
            onChange={(client) => setOptions({ ...options, client })}
          />
          <Switch
            label="With notes beside readings"
            on={options.notes}
            onChange={(notes) => setOptions({ ...options, notes })}
          />
        </div>
        {made?.length && <Callout weight={made.length.weight}>{made.length.words}</Callout>}
        {made === null && <p>Making the link…</p>}
        {made !== null && made.length?.usable !== false && (
          <>
            <input
              className={styles.link}
              readOnly
              aria-label="The link"
              value={made.address}
              onFocus={({ currentTarget }) => currentTarget.select()}
            />
            <p>
              {made.address.length} characters, {kilobytes} kB. A link that is changed or cut short on its way is
              noticed when it is opened.
            </p>
            <div className={styles.bar}>
              <button type="button" onClick={copy}>
                Copy the link
              </button>
              {'share' in navigator && (
                <button type="button" onClick={share}>
                  Hand it on…
                </button>
              )}
              <a className={styles.open} href={made.address} target="_blank" rel="noreferrer">
                See what they will see
              </a>
            </div>
          </>
        )}
      </Card>
      <Card title="Code for a phone’s camera">
        {made?.code.ok && (
          <div
            className={styles.code}
            role="img"
            aria-label="QR code of the link"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing of squares, no text in it
            dangerouslySetInnerHTML={{ __html: made.svg }}
          />
        )}
        {made && !made.code.ok && (
          <Callout weight="warn">
            <p>{made.code.message}</p>
          </Callout>
        )}
        <p className={styles.about}>
          Opens on any phone, to look at only. “Make it mine” there copies the job into the jobs of that phone.
        </p>
      </Card>
    </div>
  );
}

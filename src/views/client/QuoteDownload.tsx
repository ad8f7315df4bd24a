import { useState } from 'react';
import type { Job, Price, Result } from '../../core';
import { download, useSession } from '../../job';
import { loadBrowserFonts, loadSharing, quoteFile } from '../../output';
import styles from './client.module.css';
import { fileStem } from './file-stem';
import { linkTo } from './link-to';
import { today } from './today';

/** Makes the quote as a PDF. The code on it opens the finished surround, without prices and names. */
export function QuoteDownload({ job, result, price }: { job: Job; result: Result; price: Price }) {
  const { tell } = useSession();
  const [making, setMaking] = useState(false);
  const make = async () => {
    setMaking(true);
    try {
      const [fonts, sharing] = await Promise.all([loadBrowserFonts(), loadSharing()]);
      const link = sharing.writeLink(job, { prices: false, client: false, notes: false });
      const file = await quoteFile(job, result, price, fonts, { today: today(), code: sharing.qrCode(linkTo(link)) });
      download(`${fileStem(job.name)}-quote.pdf`, file as Uint8Array<ArrayBuffer>, 'application/pdf');
    } catch (error) {
      tell(
        `The quote could not be made (${error instanceof Error ? error.message : String(error)}). The job is as it was; try again.`,
      );
    } finally {
      setMaking(false);
    }
  };
  return (
    <span className={styles.bar}>
      <button type="button" disabled={making} onClick={make}>
        Quote: PDF
      </button>
      <span role="status">{making ? 'Making the quote…' : ''}</span>
    </span>
  );
}

import type { Job, Price, Result } from '../../core';
import { jobFileStem } from '../../job';
import { loadBrowserFonts, loadSharing, quoteFile } from '../../output';
import { Download } from '../parts';
import { linkTo } from './link-to';
import { today } from './today';

/** Makes the quote as a PDF. The code on it opens the finished surround, without prices and names. */
export function QuoteDownload({ job, result, price }: { job: Job; result: Result; price: Price }) {
  const make = async () => {
    const [fonts, sharing] = await Promise.all([loadBrowserFonts(), loadSharing()]);
    const link = sharing.writeLink(job, { prices: false, client: false, notes: false });
    const file = await quoteFile(job, result, price, fonts, { today: today(), code: sharing.qrCode(linkTo(link)) });
    return {
      ok: true as const,
      name: `${jobFileStem(job)}-quote.pdf`,
      content: new Uint8Array(file),
      type: 'application/pdf',
    };
  };
  return <Download label="Quote: PDF" what="quote" make={make} />;
}

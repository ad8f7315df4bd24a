import { useState } from 'react';
import { download, jobFileName, useSession, useSessionState } from '../../job';
import { fieldSheetPdf, loadBrowserFonts } from '../../output';
import { Card } from '../parts';
import styles from './site.module.css';

/** The shortest plan of readings for this alcove, to print and take along. */
export function FieldSheet() {
  const { tell } = useSession();
  const job = useSessionState(({ solved }) => solved);
  const [making, setMaking] = useState(false);
  if (!job) return null;
  const make = async () => {
    setMaking(true);
    try {
      const bytes = await fieldSheetPdf(job, await loadBrowserFonts());
      download(`${jobFileName(job).replace(/\.json$/, '')}-field-sheet.pdf`, new Uint8Array(bytes), 'application/pdf');
    } catch (error) {
      tell(
        `The field sheet could not be made (${error instanceof Error ? error.message : String(error)}). The job is as it was; try again, with a connection if this is the first time.`,
      );
    } finally {
      setMaking(false);
    }
  };
  return (
    <Card title="Field sheet">
      <p className={styles.about}>
        The fewest readings that settle every cut edge of this alcove, in the order you would walk, to print and fill
        in.
      </p>
      <button type="button" disabled={making} onClick={make}>
        Blank field sheet: PDF
      </button>
      <p className={styles.about} role="status">
        {making ? 'Making the field sheet…' : ''}
      </p>
    </Card>
  );
}

import { jobFileStem, useSessionState } from '../../job';
import { fieldSheetPdf, loadBrowserFonts } from '../../output';
import { Card, Download } from '../parts';
import styles from './site.module.css';

/** The shortest plan of readings for this alcove, to print and take along. */
export function FieldSheet() {
  const job = useSessionState(({ solved }) => solved);
  if (!job) return null;
  const make = async () => ({
    ok: true as const,
    name: `${jobFileStem(job)}-field-sheet.pdf`,
    content: new Uint8Array(await fieldSheetPdf(job, await loadBrowserFonts())),
    type: 'application/pdf',
  });
  return (
    <Card title="Field sheet">
      <p className={styles.about}>
        The fewest readings that settle every cut edge of this alcove, in the order you would walk, to print and fill
        in.
      </p>
      <Download label="Blank field sheet: PDF" what="field sheet" make={make} />
    </Card>
  );
}

import { useState } from 'react';
import { download, jobFileName, useSession, useSessionState } from '../../job';
import { loadBrowserFonts, surveyRecordPdf } from '../../output';
import { Card } from '../parts';
import styles from './site.module.css';

/** The survey as read, on paper. */
export function SurveyRecord() {
  const { tell } = useSession();
  const job = useSessionState(({ solved }) => solved);
  const result = useSessionState((state) => state.result);
  const [making, setMaking] = useState(false);
  if (!job || !result) return null;
  const make = async () => {
    setMaking(true);
    try {
      const bytes = await surveyRecordPdf(job, result, await loadBrowserFonts());
      const name = jobFileName(job).replace(/\.json$/, '');
      download(`${name}-survey-record.pdf`, new Uint8Array(bytes), 'application/pdf');
    } catch (error) {
      tell(
        `The survey record could not be made (${error instanceof Error ? error.message : String(error)}). The job is as it was; try again, with a connection if this is the first time.`,
      );
    } finally {
      setMaking(false);
    }
  };
  return (
    <Card title="Survey record">
      <p className={styles.about}>
        Every reading with its misfit and ±, what was assumed, and how walls, corners and rim are judged.
      </p>
      <button type="button" disabled={making} onClick={make}>
        Filled survey record: PDF
      </button>
      <p className={styles.about} role="status">
        {making ? 'Making the survey record…' : ''}
      </p>
    </Card>
  );
}

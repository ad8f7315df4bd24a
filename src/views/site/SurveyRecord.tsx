import { jobFileStem, useSessionState } from '../../job';
import { loadBrowserFonts, surveyRecordPdf } from '../../output';
import { Card, Download } from '../parts';
import styles from './site.module.css';

/** The survey as read, on paper. */
export function SurveyRecord() {
  const job = useSessionState(({ solved }) => solved);
  const result = useSessionState((state) => state.result);
  if (!job || !result) return null;
  const make = async () => ({
    ok: true as const,
    name: `${jobFileStem(job)}-survey-record.pdf`,
    content: new Uint8Array(await surveyRecordPdf(job, result, await loadBrowserFonts())),
    type: 'application/pdf',
  });
  return (
    <Card title="Survey record">
      <p className={styles.about}>
        Every reading with its misfit and ±, what was assumed, and how walls, corners and rim are judged.
      </p>
      <Download label="Filled survey record: PDF" what="survey record" make={make} />
    </Card>
  );
}

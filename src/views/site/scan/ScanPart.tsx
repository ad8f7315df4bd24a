import { useEffect } from 'react';
import { useDraft } from '../../../job';
import { ChooseFile } from './ChooseFile';
import { InJob } from './InJob';
import { Sorted } from './Sorted';
import styles from './scan.module.css';
import { useScan } from './scan-store';
import { Understood } from './Understood';
import { Working } from './Working';

/** From the file of a scan to the walls of the job. */
export function ScanPart() {
  const stage = useScan((state) => state.stage);
  const enter = useScan((state) => state.enter);
  const job = useDraft(({ draft }) => draft.id);
  useEffect(() => enter(job), [enter, job]);
  return (
    <div className={styles.all} data-rows>
      {stage.at === 'choosing' && <ChooseFile />}
      {stage.at === 'working' && <Working {...stage} />}
      {stage.at === 'understood' && <Understood {...stage} />}
      {stage.at === 'sorted' && <Sorted {...stage} />}
      <InJob />
    </div>
  );
}

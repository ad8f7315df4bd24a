import { useEffect, useState } from 'react';
import type { Scan } from '../../../core';
import { useDraft, useSession } from '../../../job';
import { Card, RemoveButton, Switch, useLengths } from '../../parts';
import { ScanFindings } from './ScanFindings';
import { scaleWords } from './scale-words';
import styles from './scan.module.css';
import { useScan } from './scan-store';

/** The scans that the job has. */
export function InJob() {
  const scans = useDraft(({ draft }) => draft.job.scans);
  if (scans.length === 0) return null;
  return (
    <Card title="Scans in this job" rows>
      <ul className={styles.inJob}>
        {scans.map((scan) => (
          <li key={scan.id} data-row>
            <ScanInJob scan={scan as Scan} />
          </li>
        ))}
      </ul>
    </Card>
  );
}

function ScanInJob({ scan }: { scan: Scan }) {
  const session = useSession();
  const job = useDraft(({ draft }) => draft.id);
  const readings = useDraft(({ draft }) => draft.job.readings);
  const revision = useScan((state) => state.revision);
  const { show } = useScan.getState();
  const lengths = useLengths();
  const [whole, setWhole] = useState(false);
  const { choose, remove } = session.draft.getState();
  const name = scan.source ?? scan.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: its points may have come or gone with the scan in hand
  useEffect(() => {
    let current = true;
    void session.scans.ids(job).then((ids) => current && setWhole(ids.includes(scan.id)));
    return () => {
      current = false;
    };
  }, [session, job, scan, revision]);
  const mend = async () => {
    const kept = await session.scans.read(job, scan.id);
    if (kept) show({ source: name, id: scan.id, quality: null, ...kept });
    else setWhole(false);
  };
  return (
    <>
      <p>
        <strong>{name}</strong>
        <span className={styles.about}>
          : {scan.points.toLocaleString()} points in {cellsOf(scan).toLocaleString()} cells.{' '}
          {whole ? 'Its points are kept in this browser.' : 'Its points are not kept here, only its cells.'}
        </span>
      </p>
      <p className={styles.about}>{scaleWords(readings, scan.scaleSd, lengths)}</p>
      <div className={styles.row}>
        <Switch
          label={`Use ${name}`}
          on={!scan.off}
          onChange={(on) => choose(['scans', scan.id, 'off'], on ? undefined : true)}
        />
        {whole && (
          <button type="button" onClick={() => void mend()}>
            Mend it
          </button>
        )}
        <RemoveButton className={styles.remove} onRemove={() => remove('scans', scan.id)}>
          Take it out
        </RemoveButton>
      </div>
      <ScanFindings of={scan.id} />
    </>
  );
}

const cellsOf = ({ surfaces }: Scan): number =>
  Object.values(surfaces).reduce((sum, grid) => sum + (grid?.value.filter((value) => value !== null).length ?? 0), 0);

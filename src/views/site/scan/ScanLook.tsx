import { useMemo, useState } from 'react';
import { LABEL_NAMES } from '../../../core';
import { toCloud } from '../../../scan';
import { pointsInLasso, ScanView } from '../../../scene';
import { AlcovePane, useCalm } from '../../alcove';
import { partNames } from './part-names';
import styles from './scan.module.css';
import { type Stage, useScan } from './scan-store';

interface ScanLookProps {
  picked: string | null;
  onPick: (item: string) => void;
}

/** The scan in hand in 3D; the alcove where there is none. */
export function ScanLook({ picked: item, onPick }: ScanLookProps) {
  const stage = useScan((state) => state.stage);
  const { revision, visible, emphasised, picked, lasso } = useScan();
  const { pick } = useScan.getState();
  const calm = useCalm();
  const [reset, setReset] = useState(0);
  const points = usePoints(stage);
  if (!points) return <AlcovePane picked={item} onPick={onPick} />;
  const labels = stage.at === 'sorted' ? stage.labels : null;
  const description = labels
    ? `The points of the scan, coloured by part${emphasised ? `, ${partNames[emphasised]} shown up` : ''}. The list of parts says the same.`
    : 'The points of the scan as the file holds them, upright as it is now told.';
  return (
    <section className={styles.pane} aria-label="The scan in 3D">
      <div className={styles.stage} data-testid="scan">
        <ScanView
          {...{ points, labels, revision, visible, emphasised, lasso, description, calm, reset }}
          picked={picked?.points ?? null}
          names={partNames}
          onLasso={(line, projection) => {
            if (!labels) return;
            const inSight = (point: number) => visible.has(LABEL_NAMES[labels[point]!]!);
            pick({ points: pointsInLasso(points, inSight, projection, line), how: 'drawn around' });
          }}
        />
        <button type="button" className={styles.reset} onClick={() => setReset((count) => count + 1)}>
          First view
        </button>
      </div>
    </section>
  );
}

/** The points to draw, upright and in mm; null while there are none. */
function usePoints(stage: Stage): Float32Array | null {
  const { scan, unit, up } = stage.at === 'understood' ? stage : { scan: null, unit: null, up: null };
  const turned = useMemo(() => (scan ? toCloud(scan, unit, up).positions : null), [scan, unit, up]);
  return stage.at === 'sorted' ? stage.positions : turned;
}

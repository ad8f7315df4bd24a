import { useMemo } from 'react';
import { LABEL, type LabelName } from '../../../core';
import { type Cluster, clustersOf, pointsLabelled } from '../../../scan';
import { type Lengths, useLengths } from '../../parts';
import { partNames } from './part-names';
import styles from './scan.module.css';
import { type Sorted, useScan } from './scan-store';

/** The things that a part is made of, each to be picked whole. */
export function Clusters({ positions, labels, of }: Sorted & { of: LabelName }) {
  const revision = useScan((state) => state.revision);
  const { pick } = useScan.getState();
  const lengths = useLengths();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the labels are changed in place, which the revision tells
  const clusters = useMemo(
    () => clustersOf(positions, pointsLabelled(labels, LABEL[of])),
    [positions, labels, of, revision],
  );
  return (
    <ol className={styles.clusters} aria-label={`Things of: ${partNames[of]}`}>
      {clusters.map((cluster, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a thing has no other name than its place by size
        <li key={i}>
          <span>
            <strong>{cluster.points.length.toLocaleString()} points</strong>, {placeOf(cluster, lengths)}
          </span>
          <button
            type="button"
            aria-label={`Pick thing ${i + 1} of: ${partNames[of]}`}
            onClick={() => pick({ points: cluster.points, how: `thing ${i + 1} of “${partNames[of]}”` })}
          >
            Pick
          </button>
        </li>
      ))}
    </ol>
  );
}

/** Where it lies, from the two lines on the back wall. */
function placeOf({ low, high }: Cluster, { text }: Lengths): string {
  const size = [0, 1, 2].map((axis) => text(high[axis]! - low[axis]!)).join(' × ');
  const [x, y, z] = [0, 1, 2].map((axis) => (low[axis]! + high[axis]!) / 2) as [number, number, number];
  const across = `${text(Math.abs(x))} ${x < 0 ? 'left' : 'right'}`;
  const height = `${text(Math.abs(y))} ${y < 0 ? 'below' : 'above'} the level line`;
  return `${size}; ${across}, ${height}, ${text(Math.max(0, z))} out from the back wall`;
}

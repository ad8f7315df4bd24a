import { LABEL, type SegmentQuality, Z_95 } from '../../../core';
import { pointsLabelled } from '../../../scan';
import { partColours } from '../../../scene';
import { useLengths } from '../../parts';
import { listedParts, partNames } from './part-names';
import styles from './scan.module.css';
import { type Sorted, useScan } from './scan-store';

/** Legend and list of the parts: how many points each has, how noisy it is, whether it is drawn, and a way to pick it. */
export function PartList({ labels, quality }: Sorted) {
  const counts = useScan((state) => state.counts);
  const visible = useScan((state) => state.visible);
  const emphasised = useScan((state) => state.emphasised);
  const { setVisible, emphasise, pick } = useScan.getState();
  const lengths = useLengths();
  const noiseOf = (part: string): string | null => {
    const noise = quality?.noise[part as keyof SegmentQuality['noise']];
    return noise === undefined || noise === null ? null : `noise ±${lengths.fine(Z_95 * noise)}`;
  };
  return (
    <ul className={styles.parts} aria-label="Parts of the scan">
      {listedParts.map((part) => {
        const count = counts[LABEL[part]] ?? 0;
        const name = partNames[part];
        const noise = noiseOf(part);
        return (
          <li key={part} className={styles.part} data-emphasised={emphasised === part || undefined}>
            <span className={styles.swatch} style={{ background: partColours[part] }} aria-hidden="true" />
            <span className={styles.partWords}>
              <strong>{name}</strong>
              <span className={styles.about}>
                {count === 0 ? 'no points' : `${count.toLocaleString()} points`}
                {count > 0 && noise !== null && `, ${noise}`}
              </span>
            </span>
            <span className={styles.partButtons}>
              <button
                type="button"
                disabled={count === 0}
                aria-pressed={emphasised === part}
                aria-label={`Show up: ${name}`}
                onClick={() => emphasise(emphasised === part ? null : part)}
              >
                Show up
              </button>
              <button
                type="button"
                disabled={count === 0}
                aria-pressed={!visible.has(part)}
                aria-label={`Hide: ${name}`}
                onClick={() => setVisible(part, !visible.has(part))}
              >
                {visible.has(part) ? 'Hide' : 'Hidden'}
              </button>
              <button
                type="button"
                disabled={count === 0}
                aria-label={`Pick: ${name}`}
                onClick={() => pick({ points: pointsLabelled(labels, LABEL[part]), how: `all of “${name}”` })}
              >
                Pick
              </button>
            </span>
          </li>
        );
      })}
    </ul>
  );
}

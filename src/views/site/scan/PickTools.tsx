import { useState } from 'react';
import { LABEL, type LabelName } from '../../../core';
import { ChoiceField, Switch } from '../../parts';
import { Clusters } from './Clusters';
import { PickByPlace } from './PickByPlace';
import { listedParts, partNames } from './part-names';
import styles from './scan.module.css';
import { type Sorted, useScan } from './scan-store';

/** Ways to pick points, and what to do with those picked. */
export function PickTools(sorted: Sorted) {
  const lasso = useScan((state) => state.lasso);
  const picked = useScan((state) => state.picked);
  const counts = useScan((state) => state.counts);
  const { setLasso, assign, pick } = useScan.getState();
  const [into, setInto] = useState<LabelName>('clutter');
  const [of, setOf] = useState<LabelName>('clutter');
  return (
    <div className={styles.tools}>
      <h3>Mend it</h3>
      <p className={styles.about}>
        Pick points that lie in the wrong part, then say what they are. A towel or a tap goes to “other things” and is
        left out. Hide what stands in front first: a line drawn around points takes all that are in sight.
      </p>
      <Switch label="Draw around points in the drawing" on={lasso} onChange={setLasso} />
      <details className={styles.more}>
        <summary>Pick one of the things it is made of</summary>
        <ChoiceField
          label="Things of"
          labelShown
          value={of}
          onChoose={setOf}
          choices={listedParts
            .filter((part) => (counts[LABEL[part]] ?? 0) > 0 || part === of)
            .map((part) => [part, partNames[part]] as const)}
        />
        <Clusters {...sorted} of={of} />
      </details>
      <details className={styles.more}>
        <summary>Pick by place</summary>
        <PickByPlace {...sorted} />
      </details>
      <div className={styles.picked} role="status">
        {picked ? `${picked.points.length.toLocaleString()} points picked: ${picked.how}.` : 'No points picked.'}
      </div>
      <div className={styles.row}>
        <ChoiceField
          label="They are"
          labelShown
          value={into}
          onChoose={setInto}
          choices={listedParts.map((part) => [part, partNames[part]] as const)}
        />
        <button type="button" className={styles.main} disabled={!picked} onClick={() => assign(into)}>
          Set
        </button>
        <button type="button" disabled={!picked} onClick={() => pick(null)}>
          Pick none
        </button>
      </div>
    </div>
  );
}

import { toleranceSets } from '../../core';
import { useDraft, useSession } from '../../job';
import { ChoiceField, NumberField } from '../parts';
import styles from './verdicts.module.css';

const names = toleranceSets.map(({ id, name }) => [id, name] as const);

/** Which limits the walls are judged by, where they stand, and limits of one's own. */
export function Tolerances() {
  const { set } = useDraft(({ draft }) => draft.job.tolerances);
  const { choose } = useSession().draft.getState();
  const chosen = toleranceSets.find(({ id }) => id === set) ?? toleranceSets[0]!;
  return (
    <div className={styles.tolerances}>
      <ChoiceField
        label="Judged by"
        labelShown
        value={chosen.id}
        choices={names}
        onChoose={(id) => choose(['tolerances', 'set'], id)}
      />
      <p>
        {chosen.about} <span className={styles.source}>Source: {chosen.source}</span>
      </p>
      <details>
        <summary>Limits of your own</summary>
        <p className={styles.rule}>Each takes the place of the one above; leave a field empty to keep that.</p>
        <div className={styles.own}>
          <NumberField
            path={['tolerances', 'own', 'plumb']}
            label="Plumb"
            labelShown
            optional
            kind="number"
            unit="mm/m"
          />
          <NumberField path={['tolerances', 'own', 'flat']} label="Flat, under a straightedge" labelShown optional />
          <NumberField
            path={['tolerances', 'own', 'square']}
            label="Square"
            labelShown
            optional
            kind="number"
            unit="mm/m"
          />
          <NumberField
            path={['tolerances', 'own', 'level']}
            label="Rim level"
            labelShown
            optional
            kind="number"
            unit="mm/m"
          />
        </div>
      </details>
    </div>
  );
}

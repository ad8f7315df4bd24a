import { useDraft, useSession } from '../../job';
import { Card, ChoiceField, NumberField } from '../parts';
import styles from './site.module.css';

/** The level line's height, the tub or base, and how well the instruments read. */
export function Basics() {
  const kind = useDraft(({ draft }) => draft.job.rim.kind);
  const { choose } = useSession().draft.getState();
  return (
    <Card title="Level line, tub and instruments">
      <div className={styles.form}>
        <NumberField path={['levelAboveFloor']} label="Level line above the floor" labelShown />
        <ChoiceField
          label="Below the panels"
          labelShown
          value={kind}
          onChoose={(value) => choose(['rim', 'kind'], value)}
          choices={[
            ['tub', 'tub'],
            ['shower-base', 'shower base'],
          ]}
        />
        <NumberField path={['rim', 'width']} label="Back wall to its outer face" labelShown />
        <NumberField path={['rim', 'apronHeight']} label="Floor to rim, at the front" labelShown />
      </div>
      <h3>Standard deviation of each instrument</h3>
      <p className={styles.about}>Two readings in three lie within it. Leave a field empty for the usual figure.</p>
      <div className={styles.form}>
        <NumberField path={['instruments', 'tape', 'sd']} label="Tape" labelShown optional placeholder="class II" />
        <NumberField path={['instruments', 'laser', 'sd']} label="Laser" labelShown optional placeholder="usual" />
        <NumberField
          path={['instruments', 'rule', 'sd']}
          label="Rule, gap to a line"
          labelShown
          optional
          placeholder="usual"
        />
        <NumberField
          path={['instruments', 'straightedge', 'sd']}
          label="Straightedge"
          labelShown
          optional
          placeholder="usual"
        />
        <NumberField
          path={['instruments', 'angleFinder', 'sd']}
          label="Angle finder"
          labelShown
          optional
          kind="degrees"
          placeholder="usual"
        />
      </div>
    </Card>
  );
}

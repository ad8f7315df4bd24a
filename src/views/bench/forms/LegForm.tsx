import { useDraft, useSession } from '../../../job';
import { Card, NumberField, Switch } from '../../parts';
import styles from '../bench.module.css';

/** Whether pieces are cut for the strip of wall beside the tub, and how they fit. */
export function LegForm() {
  const make = useDraft(({ draft }) => draft.job.legs.make);
  const { choose } = useSession().draft.getState();
  return (
    <Card title="Legs beside the tub">
      <Switch
        label="Legs where a side panel stands out past the apron"
        on={make}
        onChange={(on) => choose(['legs', 'make'], on)}
      />
      <div className={styles.form}>
        <NumberField path={['legs', 'joint']} label="Joint to the panel above" labelShown />
        <NumberField path={['legs', 'floorGap']} label="Gap to the floor" labelShown />
        <NumberField path={['fit', 'rimJoint']} label="Joint to the tub" labelShown />
      </div>
    </Card>
  );
}

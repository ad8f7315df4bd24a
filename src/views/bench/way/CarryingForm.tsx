import { useDraft, useSession } from '../../../job';
import { Card, ChoiceField, NumberField } from '../../parts';
import styles from '../bench.module.css';

/** What panels and sheets must pass; what is left empty is not judged. */
export function CarryingForm() {
  const turn = useDraft(({ draft }) => draft.job.carrying.stair.turn);
  const { choose } = useSession().draft.getState();
  return (
    <Card title="What it must pass">
      <p className={styles.about}>What is left empty is not judged.</p>
      <h3>Over the alcove</h3>
      <div className={styles.form}>
        <Size path={['ceiling']} label="Ceiling above the level line" />
        <Size path={['header']} label="Header above the level line" />
      </div>
      <h3>Narrowest door</h3>
      <div className={styles.form}>
        <Size path={['door', 'width']} label="Clear width" />
        <Size path={['door', 'height']} label="Clear height" />
      </div>
      <h3>Turn of a corridor</h3>
      <div className={styles.form}>
        <Size path={['corridor', 'before']} label="Width before it" />
        <Size path={['corridor', 'after']} label="Width after it" />
        <Size path={['corridor', 'height']} label="Ceiling height there" />
        <NumberField path={['carrying', 'corridor', 'turn']} label="Turns by" kind="degrees" labelShown />
      </div>
      <h3>Stair</h3>
      <div className={styles.form}>
        <Size path={['stair', 'width']} label="Clear width of the stair" />
        <Size path={['stair', 'headroom']} label="Headroom over the nosings" />
        <NumberField path={['carrying', 'stair', 'pitch']} label="Pitch" kind="degrees" labelShown />
        <Size path={['stair', 'landing']} label="Depth of the landing" />
        <ChoiceField
          label="Turns on the landing"
          labelShown
          value={turn}
          choices={[
            ['none', 'no turn'],
            ['quarter', 'a quarter turn'],
            ['half', 'a half turn'],
          ]}
          onChoose={(chosen) => choose(['carrying', 'stair', 'turn'], chosen)}
        />
      </div>
    </Card>
  );
}

const Size = ({ path, label }: { path: string[]; label: string }) => (
  <NumberField path={['carrying', ...path]} label={label} optional placeholder="none" labelShown />
);

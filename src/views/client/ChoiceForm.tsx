import { useDraft, useSession } from '../../job';
import { NumberField, Switch } from '../parts';
import styles from './client.module.css';
import { FinishForm } from './FinishForm';
import { ShelvesOfChoice } from './ShelvesOfChoice';

const trimFields = [
  ['width', 'Width of the trim'],
  ['verticalWidth', 'Width of the uprights'],
  ['thickness', 'Thickness'],
  ['lip', 'Lip over the edge'],
] as const;

/** What a choice has unlike the plan. @param tall height of the panels above the rim, mm */
export function ChoiceForm({ id, tall }: { id: string; tall: number }) {
  const choice = useDraft(({ draft }) => draft.job.choices.find((each) => each.id === id));
  const plan = useDraft(({ draft }) => draft.job);
  const { choose } = useSession().draft.getState();
  if (!choice) return null;
  const at = ['choices', id] as const;
  return (
    <div className={styles.column}>
      <Switch
        label="A finish of its own"
        on={choice.finish !== undefined}
        onChange={(on) => choose([...at, 'finish'], on ? plan.finish : undefined)}
      />
      {choice.finish && <FinishForm path={[...at, 'finish']} title="Panels in" />}
      <div className={styles.form}>
        {trimFields.map(([field, label]) => (
          <NumberField
            key={field}
            path={[...at, 'trim', field]}
            label={label}
            optional
            placeholder="as planned"
            labelShown
          />
        ))}
      </div>
      <ShelvesOfChoice path={[...at, 'shelves']} tall={tall} />
    </div>
  );
}

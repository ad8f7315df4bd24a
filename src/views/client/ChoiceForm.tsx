import { useDraft, useSession } from '../../job';
import { NumberField, Switch } from '../parts';
import { ChoiceName, type ChoiceNameProps } from './ChoiceName';
import styles from './client.module.css';
import { FinishForm } from './FinishForm';
import { ShelvesOfChoice } from './ShelvesOfChoice';

const trimFields = [
  ['width', 'Width of the trim'],
  ['verticalWidth', 'Width of the uprights'],
  ['thickness', 'Thickness'],
  ['lip', 'Lip over the edge'],
] as const;

interface ChoiceFormProps extends ChoiceNameProps {
  /** height of the panels above the rim, mm */
  tall: number;
}

/** What a choice is called, and what it has unlike the plan. */
export function ChoiceForm({ tall, ...named }: ChoiceFormProps) {
  const { id } = named;
  const choice = useDraft(({ draft }) => draft.job.choices.find((each) => each.id === id));
  const plan = useDraft(({ draft }) => draft.job);
  const { choose } = useSession().draft.getState();
  if (!choice) return null;
  const at = ['choices', id] as const;
  return (
    <div className={styles.column}>
      <ChoiceName {...named} />
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

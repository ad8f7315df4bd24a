import { type FieldPath, useDraft, useSession } from '../../job';
import { ChoiceField, Cross, NumberField, RemoveButton } from '../parts';
import styles from './client.module.css';

const taxed = [
  ['materials', 'taxed as materials'],
  ['labour', 'taxed as work'],
  ['none', 'not taxed'],
] as const;

/** What else is charged, such as delivery. */
export function OtherPrices() {
  const others = useDraft(({ draft }) => draft.job.prices.others);
  const { write, choose, addTo, removeFrom, leave } = useSession().draft.getState();
  const at = (...path: FieldPath): FieldPath => ['prices', 'others', ...path];
  return (
    <div className={styles.rows} data-rows>
      {others.map(({ label, taxedAs }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no name but their place
        <div key={i} className={styles.row} data-row>
          <input
            aria-label={`What else, row ${i + 1}`}
            value={label}
            maxLength={100}
            placeholder="delivery"
            onChange={({ target }) => write(at(i, 'label'), target.value)}
            onBlur={leave}
          />
          <NumberField path={at(i, 'amount')} label={`Amount of what else, row ${i + 1}`} kind="money" />
          <ChoiceField
            label={`Tax on what else, row ${i + 1}`}
            value={taxedAs}
            choices={taxed}
            onChoose={(chosen) => choose(at(i, 'taxedAs'), chosen)}
          />
          <RemoveButton aria-label={`Take what else, row ${i + 1}, out`} onRemove={() => removeFrom(at(), i)}>
            <Cross />
          </RemoveButton>
        </div>
      ))}
      {others.length < 30 && (
        <button
          type="button"
          className={styles.add}
          data-adds
          onClick={() => addTo(at(), { label: '', amount: 0, taxedAs: 'materials' })}
        >
          Add something else
        </button>
      )}
    </div>
  );
}

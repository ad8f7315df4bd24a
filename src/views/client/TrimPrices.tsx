import { soldLength } from '../../core';
import { type FieldPath, useDraft, useSession } from '../../job';
import { Cross, NumberField, RemoveButton } from '../parts';
import styles from './client.module.css';

/** What trim costs by its width, by the foot or the metre. */
export function TrimPrices() {
  const trim = useDraft(({ draft }) => draft.job.prices.trim);
  const by = useDraft(({ draft }) => soldLength(draft.job.display));
  const { addTo, removeFrom } = useSession().draft.getState();
  const at = (...path: FieldPath): FieldPath => ['prices', 'trim', ...path];
  return (
    <div className={styles.rows} data-rows>
      {trim.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no name but their place
        <div key={i} className={styles.row} data-row>
          <NumberField path={at(i, 'upTo')} label={`Up to this width, row ${i + 1}`} labelShown />
          <NumberField path={at(i, 'metre')} label={`A ${by}, row ${i + 1}`} kind="money-by-length" labelShown />
          <RemoveButton aria-label={`Take row ${i + 1} out`} onRemove={() => removeFrom(at(), i)}>
            <Cross />
          </RemoveButton>
        </div>
      ))}
      {trim.length < 20 && (
        <button type="button" className={styles.add} data-adds onClick={() => addTo(at(), { upTo: 38, metre: 0 })}>
          Add a width of trim
        </button>
      )}
    </div>
  );
}

import { soldLength } from '../../core';
import { type FieldPath, useDraft, useSession } from '../../job';
import { Cross, NumberField } from '../parts';
import styles from './client.module.css';

/** What trim costs by its width, by the foot or the metre. */
export function TrimPrices() {
  const trim = useDraft(({ draft }) => draft.job.prices.trim);
  const by = useDraft(({ draft }) => soldLength(draft.job.display));
  const { addTo, removeFrom } = useSession().draft.getState();
  const at = (...path: FieldPath): FieldPath => ['prices', 'trim', ...path];
  return (
    <>
      {trim.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no name but their place
        <div key={i} className={styles.row}>
          <NumberField path={at(i, 'upTo')} label={`Up to this width, row ${i + 1}`} labelShown />
          <NumberField path={at(i, 'metre')} label={`A ${by}, row ${i + 1}`} kind="money-by-length" labelShown />
          <button type="button" aria-label={`Take row ${i + 1} out`} onClick={() => removeFrom(at(), i)}>
            <Cross />
          </button>
        </div>
      ))}
      {trim.length < 20 && (
        <button type="button" className={styles.add} onClick={() => addTo(at(), { upTo: 38, metre: 0 })}>
          Add a width of trim
        </button>
      )}
    </>
  );
}

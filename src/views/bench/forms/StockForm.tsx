import { useDraft, useSession } from '../../../job';
import { Card, Cross, NumberField, RemoveButton } from '../../parts';
import styles from '../bench.module.css';

const most = 20;

/** Lengths that the trim is sold in. */
export function StockForm() {
  const count = useDraft(({ draft }) => draft.job.trim.stock.length);
  const last = useDraft(({ draft }) => draft.job.trim.stock.at(-1)?.length ?? 2440);
  const { addTo, removeFrom } = useSession().draft.getState();
  return (
    <Card title="Lengths that the trim is sold in" rows>
      <p className={styles.about}>Leave the number open where as many as needed can be had.</p>
      <ul className={styles.rows}>
        {Array.from({ length: count }, (_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a length is nothing but its place in the list
          <li key={i} className={styles.row} data-row>
            <NumberField path={['trim', 'stock', i, 'length']} label={`Length ${i + 1}`} labelShown />
            <NumberField
              path={['trim', 'stock', i, 'onHand']}
              label="How many there are"
              kind="number"
              labelShown
              optional
              placeholder="any number"
            />
            <RemoveButton
              aria-label={`Remove length ${i + 1}`}
              disabled={count === 1}
              onRemove={() => removeFrom(['trim', 'stock'], i)}
            >
              <Cross />
            </RemoveButton>
          </li>
        ))}
      </ul>
      <div>
        <button
          type="button"
          data-adds
          disabled={count >= most}
          onClick={() => addTo(['trim', 'stock'], { length: last })}
        >
          Add a length
        </button>
      </div>
    </Card>
  );
}

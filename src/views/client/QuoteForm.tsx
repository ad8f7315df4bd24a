import { useId } from 'react';
import { useDraft, useSession } from '../../job';
import { Card, Cross, DateField, NumberField, RemoveButton } from '../parts';
import styles from './client.module.css';

/** Whom the quote is for, how long it holds, what it leaves out. */
export function QuoteForm() {
  const quote = useDraft(({ draft }) => draft.job.quote);
  const { write, addTo, removeFrom, leave } = useSession().draft.getState();
  const id = useId();
  return (
    <Card title="On the quote" rows>
      <div className={styles.form}>
        {(
          [
            ['client', 'Client', 200],
            ['number', 'Number', 60],
          ] as const
        ).map(([field, label, most]) => (
          <span key={field} className={styles.stacked}>
            <label htmlFor={`${id}-${field}`}>{label}</label>
            <input
              id={`${id}-${field}`}
              value={quote[field]}
              maxLength={most}
              autoComplete="off"
              onChange={({ target }) => write(['quote', field], target.value)}
              onBlur={leave}
            />
          </span>
        ))}
        <DateField path={['quote', 'date']} label="Date" />
        <NumberField path={['quote', 'validity']} label="Holds for, days" kind="number" labelShown />
      </div>
      <span className={styles.stacked}>
        <label htmlFor={`${id}-from`}>From: name, address, licence</label>
        <textarea
          id={`${id}-from`}
          rows={3}
          maxLength={2000}
          value={quote.from}
          onChange={({ target }) => write(['quote', 'from'], target.value)}
          onBlur={leave}
        />
      </span>
      <h3>Not included</h3>
      <ul className={styles.column}>
        {quote.exclusions.map((text, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the lines have no name but their place
          <li key={i} className={styles.exclusion} data-row>
            <input
              aria-label={`Not included, line ${i + 1}`}
              value={text}
              maxLength={300}
              onChange={({ target }) => write(['quote', 'exclusions', i], target.value)}
              onBlur={leave}
            />
            <RemoveButton aria-label={`Take line ${i + 1} out`} onRemove={() => removeFrom(['quote', 'exclusions'], i)}>
              <Cross />
            </RemoveButton>
          </li>
        ))}
      </ul>
      {quote.exclusions.length < 30 && (
        <button type="button" data-adds onClick={() => addTo(['quote', 'exclusions'], '')}>
          Add a line
        </button>
      )}
    </Card>
  );
}

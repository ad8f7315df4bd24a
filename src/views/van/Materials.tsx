import type { Job, MaterialLine, Result } from '../../core';
import { jobFileStem } from '../../job';
import { amountText, capital, inputAmount, shoppingListCsv } from '../../output';
import { Card, Download } from '../parts';
import { useLengthsPlanned, withLengthsPlanned } from './use-stock-plan';
import styles from './van.module.css';

/** What to buy, in whole packs, each line with the rule that counts it. */
export function Materials({ job, result }: { job: Job; result: Result }) {
  const { materials } = useLengthsPlanned(result, job);
  const csv = async () => ({
    ok: true as const,
    name: `${jobFileStem(job)}-shopping-list.csv`,
    content: await shoppingListCsv(job, await withLengthsPlanned(result, job)),
    type: 'text/csv',
  });
  return (
    <Card title="What to buy" aside={<Download label="Shopping list: CSV" what="shopping list" make={csv} />}>
      <p className={styles.about}>Counted from the fitted panels. Open a line to see its rule and figures.</p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Needed</th>
            <th scope="col">Pack</th>
            <th scope="col">Buy</th>
            <th scope="col">Left over</th>
          </tr>
        </thead>
        <tbody>
          {materials.lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">
                <Rule line={line} job={job} />
              </th>
              <td data-head="Needed">{amountText(line.quantity, line.unit, job)}</td>
              <td data-head="Pack">{amountText(line.packs.size, line.unit, job)}</td>
              <td data-head="Buy">
                <strong>{line.packs.count}</strong>
              </td>
              <td data-head="Left over">{amountText(line.packs.leftOver, line.unit, job)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.about}>Follow each product’s own sheet; where it says otherwise, it goes first.</p>
    </Card>
  );
}

function Rule({ line, job }: { line: MaterialLine; job: Job }) {
  return (
    <details className={styles.rule}>
      <summary>{capital(line.label)}</summary>
      <p>{capital(line.rule)}.</p>
      <dl className={styles.inputs}>
        {line.inputs.map((input) => (
          <div key={input.label}>
            <dt>{capital(input.label)}</dt>
            <dd>{inputAmount(input, job)}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

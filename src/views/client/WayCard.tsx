import { useMemo, useState } from 'react';
import { hidingOf, hidingPairs, type Job, lookWords, moneyText, nameOfFinish, priceOf, type Result } from '../../core';
import { useSession } from '../../job';
import { capital, counted, hidingSentence, hidingWords } from '../../output';
import { Callout, Card, RemoveButton } from '../parts';
import { ChoiceForm } from './ChoiceForm';
import type { ChoiceNameProps } from './ChoiceName';
import styles from './client.module.css';
import { PriceTable } from './PriceTable';
import type { Way } from './useWays';

interface WayCardProps extends Pick<ChoiceNameProps, 'renamed' | 'onRename'> {
  way: Way;
  own: Way;
  readOnly: boolean;
}

/** One way to finish the alcove: its list, what it costs, what it hides. */
export function WayCard({ way, own, readOnly, renamed, onRename }: WayCardProps) {
  const { remove, chooseAll } = useSession().draft.getState();
  const { id, name, job, result, failed } = way;
  const [open] = useState(renamed);
  const price = useMemo(() => (result ? priceOf(job, result) : null), [job, result]);
  const ownPrice = useMemo(() => (own.result ? priceOf(own.job, own.result) : null), [own]);
  const differences = useMemo(
    () =>
      id === null || result === null || own.result === null
        ? []
        : hidingWords(hidingPairs(own.result, result), [`the trim ${own.name.toLowerCase()}`, `“${name}”`], job),
    [id, name, job, result, own],
  );
  const tall = job.fit.top - Math.min(...(own.result?.panels.back.outline.map(([, v]) => v) ?? [0]));
  // One step of undo, and one working out.
  const take = () =>
    chooseAll([
      [['finish'], job.finish],
      [['trim'], job.trim],
      [['shelves'], job.shelves],
    ]);
  const more = price && ownPrice && id !== null ? price.total - ownPrice.total : 0;
  return (
    <Card
      title={name}
      row={id !== null}
      aside={price && <strong className={styles.price}>{priced(price.total, price.currency, price.unpriced)}</strong>}
    >
      {failed && (
        <Callout weight="bad">
          <p>This choice could not be worked out. Change it, or take it out.</p>
        </Callout>
      )}
      {result === null && !failed && <p>Working it out…</p>}
      {result && (
        <>
          <p>{listOf(job, result)}</p>
          {id !== null && price && ownPrice && price.unpriced.length + ownPrice.unpriced.length === 0 && (
            <p>
              {more === 0
                ? 'Costs the same as planned.'
                : `${moneyText(Math.abs(more), price.currency)} ${more > 0 ? 'more' : 'less'} than as planned.`}
            </p>
          )}
          <ul className={styles.sentences}>
            {(id === null
              ? hidingOf(result)
                  .filter(({ kind }) => kind === 'vertical')
                  .map((each) => hidingSentence(each, job))
              : differences
            ).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          {price && (
            <details className={styles.own}>
              <summary>List and price</summary>
              <PriceTable price={price} label={`Price of ${name}`} />
            </details>
          )}
        </>
      )}
      {!readOnly && id !== null && (
        <>
          <details className={styles.own} open={open}>
            <summary>Change it</summary>
            <ChoiceForm {...{ id, tall, renamed, onRename }} />
          </details>
          <div className={styles.bar}>
            <button type="button" onClick={take}>
              Make this the plan
            </button>
            <RemoveButton onRemove={() => remove('choices', id)}>Take out</RemoveButton>
          </div>
        </>
      )}
    </Card>
  );
}

const priced = (total: number, currency: string, unpriced: readonly string[]): string =>
  unpriced.length === 0
    ? moneyText(total, currency)
    : `${moneyText(total, currency)} and ${unpriced.length} without a price`;

function listOf(job: Job, { pieces }: Result): string {
  const finish = nameOfFinish(job.finish);
  const list = [
    `${lookWords[job.finish.look]} panels${finish === null ? '' : ` (${finish})`}`,
    pieces.trim.length === 0 ? 'no trim' : counted(pieces.trim.length, 'piece of trim', 'pieces of trim'),
    pieces.shelves.length === 0 ? 'no shelf' : counted(pieces.shelves.length, 'shelf', 'shelves'),
    ...(pieces.legs.length === 0
      ? []
      : [`${counted(pieces.legs.length, 'piece')} beside the ${job.rim.kind === 'tub' ? 'tub' : 'shower base'}`]),
  ];
  return capital(list.join(', '));
}

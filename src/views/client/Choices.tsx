import { useId, useMemo, useState } from 'react';
import { hidingOf, hidingPairs, type Job, moneyText, priceOf, type Result } from '../../core';
import { useDraft, useSession } from '../../job';
import { hidingSentence, hidingWords } from '../../output';
import type { Side } from '../../scene';
import { Callout, Card, NumberField, Segments, Switch } from '../parts';
import styles from './client.module.css';
import { FinishForm } from './FinishForm';
import { looksLike, nameOfFinish } from './finishes';
import { PriceTable } from './PriceTable';
import { Stage } from './Stage';
import { StageControls } from './StageControls';
import { useWays, type Way } from './useWays';

type Layout = 'beside' | 'wiped';
const layoutWords: readonly (readonly [Layout, string])[] = [
  ['beside', 'Side by side'],
  ['wiped', 'One picture, a line between'],
];
const MOST_OTHERS = 3;

interface ChoicesProps {
  job: Job;
  result: Result;
  readOnly?: boolean;
}

/** Two to four ways to finish the alcove, seen from the same place, each with its list and price. */
export function Choices({ job, result, readOnly = false }: ChoicesProps) {
  const ways = useWays(job, result);
  const [layout, setLayout] = useState<Layout>('beside');
  const [against, setAgainst] = useState(1);
  const ready = useMemo(() => ways.filter((way): way is Way & { result: Result } => way.result !== null), [ways]);
  const wiped = layout === 'wiped' && ready.length > 1;
  const sides = useMemo(() => {
    const shown = wiped ? [ready[0]!, ready[Math.min(against, ready.length - 1)]!] : ready;
    return shown.map(({ name, job: way, result: found }): Side => ({ name, job: way, result: found, bare: false }));
  }, [ready, wiped, against]);
  const names = sides.map(({ name }) => name).join(', ');
  return (
    <div className={styles.column}>
      <Stage {...{ sides, wiped }} description={`The alcove finished in ${sides.length} ways: ${names}.`} />
      <div className={styles.bar}>
        {ready.length > 1 && <Segments label="Shown" value={layout} choices={layoutWords} onChoose={setLayout} />}
        {wiped && ready.length > 2 && (
          <Segments
            label="Compared with"
            value={String(against)}
            choices={ready.slice(1).map(({ name }, i) => [String(i + 1), name] as const)}
            onChoose={(chosen) => setAgainst(Number(chosen))}
          />
        )}
      </div>
      <StageControls unit={job.display} single={sides.length === 1} />
      <div className={styles.ways}>
        {ways.map((way) => (
          <WayCard key={way.name} way={way} own={ways[0]!} readOnly={readOnly} />
        ))}
        {!readOnly && job.choices.length < MOST_OTHERS && <AddChoice job={job} />}
      </div>
    </div>
  );
}

function WayCard({ way, own, readOnly }: { way: Way; own: Way; readOnly: boolean }) {
  const { choose, chooseAll } = useSession().draft.getState();
  const choices = useDraft(({ draft }) => draft.job.choices);
  const { id, name, job, result, failed } = way;
  const price = useMemo(() => (result ? priceOf(job, result) : null), [job, result]);
  const ownPrice = useMemo(() => (own.result ? priceOf(own.job, own.result) : null), [own]);
  const differences = useMemo(
    () =>
      id === null || result === null || own.result === null
        ? []
        : hidingWords(hidingPairs(own.result, result), [`the trim ${own.name.toLowerCase()}`, `“${name}”`], job),
    [id, name, job, result, own],
  );
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
          <details className={styles.own}>
            <summary>Change it</summary>
            <ChoiceForm id={id} />
          </details>
          <div className={styles.bar}>
            <button type="button" onClick={take}>
              Make this the plan
            </button>
            <button
              type="button"
              onClick={() =>
                choose(
                  ['choices'],
                  choices.filter((each) => each.id !== id),
                )
              }
            >
              Take out
            </button>
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
  return [
    `${looksLike(job.finish)} panels${finish === null ? '' : ` (${finish})`}`,
    `${pieces.trim.length} pieces of trim`,
    pieces.shelves.length === 0
      ? 'no shelf'
      : `${pieces.shelves.length} ${pieces.shelves.length === 1 ? 'shelf' : 'shelves'}`,
    ...(pieces.legs.length === 0
      ? []
      : [`${pieces.legs.length} piece${pieces.legs.length === 1 ? '' : 's'} beside the tub`]),
  ]
    .join(', ')
    .replace(/^./, (letter) => letter.toUpperCase());
}

const trimFields = [
  ['width', 'Width of the trim'],
  ['verticalWidth', 'Width of the uprights'],
  ['thickness', 'Thickness'],
  ['lip', 'Lip over the edge'],
] as const;

/** What a choice has unlike the plan. */
function ChoiceForm({ id }: { id: string }) {
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
      <Switch
        label="No shelves"
        on={choice.shelves !== undefined && choice.shelves.length === 0}
        onChange={(on) => choose([...at, 'shelves'], on ? [] : undefined)}
      />
    </div>
  );
}

function AddChoice({ job }: { job: Job }) {
  const { choose } = useSession().draft.getState();
  const id = useId();
  const [name, setName] = useState('');
  const clean = name.trim();
  const taken =
    clean === ''
      ? null
      : job.choices.some((each) => each.id === clean)
        ? 'There is a choice of that name already.'
        : null;
  return (
    <Card title="Another choice">
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          const free = clean !== '' && taken === null ? clean : freeName(job);
          choose(['choices'], [...job.choices, { id: free, finish: job.finish, trim: {} }]);
          setName('');
        }}
      >
        <span className={styles.stacked}>
          <label htmlFor={id}>Called</label>
          <input
            id={id}
            value={name}
            maxLength={60}
            placeholder={freeName(job)}
            onChange={({ target }) => setName(target.value)}
          />
        </span>
        <button type="submit">Add a choice</button>
      </form>
      {taken && <p role="status">{taken}</p>}
    </Card>
  );
}

const freeName = (job: Job): string => {
  const taken = new Set(job.choices.map(({ id }) => id));
  return ['Another way', 'A third way', 'A fourth way', 'One more way'].find((name) => !taken.has(name))!;
};

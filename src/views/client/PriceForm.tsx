import { useId } from 'react';
import { type FieldPath, useDraft, useSession } from '../../job';
import { Card, ChoiceField, Cross, NumberField } from '../parts';
import styles from './client.module.css';

const CURRENCIES = [
  'USD',
  'CAD',
  'GBP',
  'EUR',
  'AUD',
  'NZD',
  'CHF',
  'SEK',
  'NOK',
  'DKK',
  'PLN',
  'CZK',
  'JPY',
  'ZAR',
  'INR',
  'MXN',
];

const sheets = [
  ['back', 'Sheet, back'],
  ['left', 'Sheet, left side'],
  ['right', 'Sheet, right side'],
] as const;
const looks = [
  ['stone', 'Stone-like'],
  ['ribbed', 'Ribbed'],
  ['large-format', 'Large format'],
] as const;
const packs = [
  ['adhesive', 'Adhesive'],
  ['sealant', 'Sealant'],
  ['caulk', 'Caulk'],
  ['flashingTape', 'Flashing tape'],
  ['strips', 'Double-faced strip'],
  ['painterTape', 'Painter’s tape'],
  ['alcohol', 'Alcohol'],
] as const;
const rates = [
  ['prepare', 'Preparing'],
  ['cut', 'Cutting'],
  ['fit', 'Fitting panels'],
  ['trim', 'Legs, trim, shelves'],
  ['seal', 'Sealing'],
  ['plumbing', 'Fitting valve and spout'],
] as const;

/** The person's own price list. */
export function PriceForm() {
  const prices = useDraft(({ draft }) => draft.job.prices);
  const { choose } = useSession().draft.getState();
  const at = (...path: FieldPath): FieldPath => ['prices', ...path];
  const money = (path: FieldPath, label: string, placeholder = 'no price') => (
    <NumberField
      key={path.join()}
      path={path}
      label={label}
      kind="money"
      optional
      placeholder={placeholder}
      labelShown
    />
  );
  return (
    <Card title="Your price list">
      <p className={styles.about}>Before tax. What is left empty counts as having no price, and the quote says so.</p>
      <div className={styles.form}>
        <ChoiceField
          label="Currency"
          labelShown
          value={prices.currency}
          choices={[...new Set([...CURRENCIES, prices.currency])].map((code) => [code, code] as const)}
          onChoose={(code) => choose(at('currency'), code)}
        />
      </div>
      <h3>Sheets, each</h3>
      <div className={styles.form}>{sheets.map(([panel, label]) => money(at('sheets', panel), label))}</div>
      <h3>A look costs more, each sheet</h3>
      <div className={styles.form}>{looks.map(([look, label]) => money(at('looks', look), label))}</div>
      <h3>Trim, a metre</h3>
      {prices.trim.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no name but their place
        <div key={i} className={styles.row}>
          <NumberField path={at('trim', i, 'upTo')} label={`Up to this width, row ${i + 1}`} labelShown />
          <NumberField path={at('trim', i, 'metre')} label={`A metre, row ${i + 1}`} kind="money" labelShown />
          <button
            type="button"
            aria-label={`Take row ${i + 1} out`}
            onClick={() =>
              choose(
                at('trim'),
                prices.trim.filter((__, k) => k !== i),
              )
            }
          >
            <Cross />
          </button>
        </div>
      ))}
      {prices.trim.length < 20 && (
        <button
          type="button"
          className={styles.add}
          onClick={() => choose(at('trim'), [...prices.trim, { upTo: 38, metre: 0 }])}
        >
          Add a width of trim
        </button>
      )}
      <div className={styles.form}>
        {money(at('angleStrip'), 'Angle strip, a metre')}
        {money(at('shelf'), 'Shelf, each')}
      </div>
      <h3>A pack of</h3>
      <div className={styles.form}>{packs.map(([pack, label]) => money(at('packs', pack), label))}</div>
      <h3>Work, an hour of one person</h3>
      <div className={styles.form}>
        {money(at('labour', 'hour'), 'Usual rate')}
        {rates.map(([part, label]) => money(at('labour', part), label, 'usual rate'))}
      </div>
      <h3>Besides</h3>
      <div className={styles.form}>
        <NumberField path={at('waste')} label="Waste, share of 1" kind="number" labelShown />
        {money(at('disposal'), 'Disposal', 'none')}
      </div>
      <Others />
      <h3>Tax</h3>
      <div className={styles.form}>
        <TaxName />
        <NumberField path={at('tax', 'materials')} label="On materials" kind="number" unit="%" labelShown />
        <NumberField path={at('tax', 'labour')} label="On work" kind="number" unit="%" labelShown />
      </div>
    </Card>
  );
}

function TaxName() {
  const id = useId();
  const name = useDraft(({ draft }) => draft.job.prices.tax.name);
  const { write, leave } = useSession().draft.getState();
  return (
    <span className={styles.stacked}>
      <label htmlFor={id}>Name of the tax</label>
      <input
        id={id}
        value={name}
        maxLength={60}
        onChange={({ target }) => write(['prices', 'tax', 'name'], target.value)}
        onBlur={leave}
      />
    </span>
  );
}

const taxed = [
  ['materials', 'taxed as materials'],
  ['labour', 'taxed as work'],
  ['none', 'not taxed'],
] as const;

function Others() {
  const others = useDraft(({ draft }) => draft.job.prices.others);
  const { write, choose, leave } = useSession().draft.getState();
  const at = (...path: FieldPath): FieldPath => ['prices', 'others', ...path];
  return (
    <>
      {others.map(({ label, taxedAs }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no name but their place
        <div key={i} className={styles.row}>
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
          <button
            type="button"
            aria-label={`Take what else, row ${i + 1}, out`}
            onClick={() =>
              choose(
                ['prices', 'others'],
                others.filter((_, k) => k !== i),
              )
            }
          >
            <Cross />
          </button>
        </div>
      ))}
      {others.length < 30 && (
        <button
          type="button"
          className={styles.add}
          onClick={() => choose(['prices', 'others'], [...others, { label: '', amount: 0, taxedAs: 'materials' }])}
        >
          Add something else
        </button>
      )}
    </>
  );
}

import { useId } from 'react';
import { soldLength } from '../../core';
import { type FieldPath, useDraft, useSession } from '../../job';
import { Card, ChoiceField, NumberField } from '../parts';
import styles from './client.module.css';
import { OtherPrices } from './OtherPrices';
import { TrimPrices } from './TrimPrices';

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
  ['backerRod', 'Backer rod'],
  ['screws', 'Bracket screws'],
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
  const by = useDraft(({ draft }) => soldLength(draft.job.display));
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
      <h3>Trim, a {by}</h3>
      <TrimPrices />
      <div className={styles.form}>
        <NumberField
          path={at('angleStrip')}
          label={`Angle strip, a ${by}`}
          kind="money-by-length"
          optional
          placeholder="no price"
          labelShown
        />
        {money(at('shelf'), 'Shelf, each')}
        {money(at('packs', 'brackets'), 'Shelf bracket, each')}
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
        <NumberField path={at('waste')} label="Waste" kind="percent" labelShown />
        {money(at('disposal'), 'Disposal', 'none')}
      </div>
      <OtherPrices />
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

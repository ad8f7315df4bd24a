import { moneyText, type PriceLine, type PriceUnit } from '../../core';
import { counted } from '../words';

const unitWords: Record<PriceUnit, (quantity: number) => string> = {
  sheet: (n) => counted(n, 'sheet'),
  foot: (n) => `${n.toFixed(2)} ft`,
  metre: (n) => `${n.toFixed(2)} m`,
  piece: (n) => `${n}`,
  pack: (n) => counted(n, 'pack'),
  minute: (n) => (n < 60 ? `${n} min` : `${Math.floor(n / 60)} h ${String(n % 60).padStart(2, '0')} min`),
  sum: () => '',
};
const perWords: Record<PriceUnit, string> = {
  sheet: '',
  foot: ' a foot',
  metre: ' a metre',
  piece: '',
  pack: '',
  minute: ' an hour',
  sum: '',
};

/** `16.01 ft`, `2 h 05 min`; empty for a flat amount. */
export const quantityText = ({ quantity, unit }: PriceLine): string => unitWords[unit](quantity);

/** `$3.47 a foot`; empty for a flat amount, a dash where there is no price. */
export const eachText = ({ each, unit }: PriceLine, currency: string): string =>
  unit === 'sum' ? '' : each === null ? '–' : `${moneyText(each, currency)}${perWords[unit]}`;

export const amountText = ({ amount }: PriceLine, currency: string): string =>
  amount === null ? 'no price' : moneyText(amount, currency);

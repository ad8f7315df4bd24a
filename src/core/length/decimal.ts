import { type Ratio, ratio } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';

/** A number in digits. */
export interface Decimal {
  value: Ratio;
  /** false where it has a decimal part */
  whole: boolean;
  /** the other meaning of `1,519`: thousands, where `value` takes the comma for a decimal one */
  ifGrouped?: Ratio;
}

/** Digits that a fraction of whole numbers holds exactly. */
const EXACT_DIGITS = 15;

/** Reads digits with a decimal point or comma and, if any, separators between groups of three. */
export function readDecimal(text: string): Read<Decimal> {
  if (/^\d+$/.test(text)) return read({ value: ratio(Number(text)), whole: true });
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    return read({ ...decimal(text.replace(',', '.')), ifGrouped: ratio(Number(text.replace(',', ''))) });
  }
  if (/^\d*[.,]\d+$/.test(text)) return read(decimal(text.replace(',', '.')));
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(text)) return read(decimal(text.replaceAll(',', '')));
  if (/^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/.test(text)) return read(decimal(text.replaceAll('.', '').replace(',', '.')));
  return refuse(`${quoted(text)} has its points and commas where no number has them; write it with one decimal point`);
}

function decimal(text: string): Decimal {
  const [before = '', after = ''] = text.split('.');
  if (before.length + after.length > EXACT_DIGITS) return { value: ratio(Number(text)), whole: after === '' };
  return { value: ratio(Number(before + after), 10 ** after.length), whole: after === '' };
}

import { mixedNumber } from './formatLength';
import { LARGEST_DENOMINATOR } from './fraction';
import { type DisplayUnit, MM_PER_INCH } from './unit';

/** An edited text may differ from the length it stands for by this much, mm. */
const TOLERANCE = 0.0005;
/** Decimals of an inch that always keep within the tolerance. */
const MOST_DECIMALS = 5;

/**
 * The shortest text to edit a length in, without its unit mark, that `parseLength` reads back to within 0.0005 mm: a
 * fraction down to 1/64 in where the length is one, else decimals; never rounded to what a tape shows. Empty where the
 * length is not finite.
 */
export function editableLength(mm: number, unit: DisplayUnit): string {
  if (!Number.isFinite(mm)) return '';
  const size = Math.abs(mm);
  const text = (unit === 'in' ? asFraction(size) : null) ?? asDecimal(size, unit === 'in' ? MM_PER_INCH : 1);
  return mm < 0 && text !== '0' ? `-${text}` : text;
}

function asFraction(mm: number): string | null {
  const parts = Math.round((mm / MM_PER_INCH) * LARGEST_DENOMINATOR);
  const near = Math.abs((parts * MM_PER_INCH) / LARGEST_DENOMINATOR - mm) <= TOLERANCE;
  return near ? mixedNumber(parts, LARGEST_DENOMINATOR) : null;
}

function asDecimal(mm: number, unit: number): string {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++) {
    const text = (mm / unit).toFixed(decimals);
    if (Math.abs(Number(text) * unit - mm) <= TOLERANCE) return text;
  }
  return (mm / unit).toFixed(MOST_DECIMALS);
}

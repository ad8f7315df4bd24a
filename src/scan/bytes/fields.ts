import { decimalAt } from './decimal';

const SPACE = 32;
const TAB = 9;
const QUOTE = 34;

/** What stands between fields: the code of one character, or `blank` for any run of blanks and tabs. */
export type Separator = number | 'blank';

const isBlank = (code: number): boolean => code === SPACE || code === TAB;

/**
 * Reads the numbers in some columns of a line.
 * @param columns of each number, counted from 0
 * @param out takes the numbers; NaN where a field holds none
 * @returns false where the line ends before one of the columns
 */
export function numbersIn(
  bytes: Uint8Array,
  from: number,
  to: number,
  { separator, point }: { separator: Separator; point: number },
  columns: readonly number[],
  out: Float64Array,
): boolean {
  const last = Math.max(...columns);
  let found = 0;
  let at = from;
  for (let column = 0; column <= last; column++) {
    while (at < to && isBlank(bytes[at]!) && bytes[at] !== separator) at++;
    if (at >= to) return false;
    let end = at;
    while (end < to && (separator === 'blank' ? !isBlank(bytes[end]!) : bytes[end] !== separator)) end++;
    for (let i = 0; i < columns.length; i++) {
      if (columns[i] !== column) continue;
      out[i] = numberIn(bytes, at, end, point);
      found++;
    }
    at = separator === 'blank' ? end : end + 1;
  }
  return found === columns.length;
}

function numberIn(bytes: Uint8Array, from: number, to: number, point: number): number {
  let [start, end] = [from, to];
  while (end > start && isBlank(bytes[end - 1]!)) end--;
  if (end - start >= 2 && bytes[start] === QUOTE && bytes[end - 1] === QUOTE) {
    start++;
    end--;
  }
  return start < end ? decimalAt(bytes, start, end, point) : Number.NaN;
}

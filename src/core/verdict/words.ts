import { type DisplayUnit, formatLength, formatPlusMinus } from '../length';
import { Z_95 } from '../reliability';

/** `7/16" ±1/32"`, the sign left to the words around it. */
export const measured = ({ value, sd }: { value: number; sd: number }, unit: DisplayUnit): string =>
  `${formatLength(Math.abs(value), { unit, denominator: 32 })} ${formatPlusMinus(Z_95 * sd, { unit })}`;

/** A limit; never printed larger than it is by more than the print's own step. */
export const limitWords = (limit: number, unit: DisplayUnit): string =>
  `limit ${formatLength(limit, { unit, denominator: 32 })}`;

export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

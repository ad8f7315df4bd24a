import type { DisplayUnit } from './unit';

/** Why a text was not read, in words that can go on from the name of the field it stands in. */
export interface Refusal {
  ok: false;
  message: string;
}

export type Read<T> = { ok: true; value: T } | Refusal;

export const read = <T>(value: T): Read<T> => ({ ok: true, value });

export const refuse = (message: string): Refusal => ({ ok: false, message });

const LONGEST_QUOTE = 40;

/** A piece of the text in quotation marks, cut where it is long. */
export function quoted(text: string): string {
  const piece = [...text.trim().slice(0, 4 * LONGEST_QUOTE)];
  return `“${piece.length > LONGEST_QUOTE ? `${piece.slice(0, LONGEST_QUOTE - 1).join('')}…` : piece.join('')}”`;
}

/** Lengths to write instead, in the unit shown. */
export const examples = (unit: DisplayUnit): string =>
  unit === 'in' ? `59 13/16, 4' 11 13/16" or 1519 mm` : `1519.2, 151.9 cm or 59 13/16 in`;

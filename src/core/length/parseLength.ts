import { addUp } from './addUp';
import { foldText } from './foldText';
import { type Part, readPart } from './part';
import { quotient } from './ratio';
import { examples, quoted, type Read, type Refusal, read, refuse } from './refusal';
import { readWords } from './spoken';
import { type JoinToken, type RawToken, type Token, tokenize } from './token';
import { type DisplayUnit, LONGEST_LENGTH, MM_PER_INCH } from './unit';

export type ParsedLength = { ok: true; mm: number } | { ok: false; message: string };

/** Characters of a text that is still taken for one length. */
const LONGEST_TEXT = 200;

/**
 * Reads a length as people write or dictate it: `59 13/16`, `4'-11 13/16"`, `151,9 cm`, `59½`, `four foot eleven`.
 * Bare numbers are in `unit`; after feet they are inches. The value is the double nearest to the length written.
 * @returns millimetres, or a sentence that says what is wrong and what to write instead, in words that can go on from
 * the name of a field
 */
export function parseLength(text: string, unit: DisplayUnit): ParsedLength {
  if (text.length > LONGEST_TEXT)
    return refuse(`${quoted(text)} is too long for one length; write it like ${examples(unit)}`);
  const folded = foldText(text).trim();
  const raw = tokenize(folded);
  if (!raw.ok) return raw;
  if (raw.value.length === 0) return refuse(`needs a length, such as ${examples(unit)}`);
  const tokens = raw.value.some(isSpoken) ? readWords(raw.value, folded) : (raw as Read<Token[]>);
  if (!tokens.ok) return tokens;
  const { negative, from } = readSign(tokens.value);
  const parts = readParts(tokens.value, from, folded);
  if (!parts.ok) return parts;
  const total = addUp(parts.value, unit, folded);
  if (!total.ok) return total;
  const mm = quotient(total.value);
  if (!(mm <= LONGEST_LENGTH)) return tooLong(folded, unit);
  return { ok: true, mm: negative && mm > 0 ? -mm : mm };
}

const isSpoken = (token: RawToken): boolean => token.kind === 'word' || token.kind === 'ordinal';

function readSign([first]: Token[]): { negative: boolean; from: number } {
  const signed = first?.kind === 'join' && (first.by === '-' || first.by === '+');
  return { negative: signed && first.by === '-', from: signed ? 1 : 0 };
}

function readParts(tokens: readonly Token[], from: number, text: string): Read<Part[]> {
  const parts: Part[] = [];
  for (let at = from; at < tokens.length || at === from; ) {
    const between = parts.length > 0 ? tokens[at] : undefined;
    const join: JoinToken | null = between?.kind === 'join' ? between : null;
    if (join?.by === '+') return refuse(`${quoted(text)} is a sum; write the length that it comes to`);
    const result = readPart(tokens, join ? at + 1 : at, text, join);
    if (!result.ok) return result;
    parts.push(result.value.part);
    at = result.value.next;
  }
  return read(parts);
}

function tooLong(text: string, unit: DisplayUnit): Refusal {
  const limit = unit === 'in' ? `${Math.floor(LONGEST_LENGTH / MM_PER_INCH)} in` : `${LONGEST_LENGTH} mm`;
  return refuse(`${quoted(text)} is longer than ${limit} (100 m), the longest taken; check the figures and the unit`);
}

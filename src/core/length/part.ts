import { readFraction } from './fraction';
import { type Ratio, sum } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';
import type { FractionToken, JoinToken, NumberToken, Span, Token } from './token';
import type { Unit } from './unit';

/** A number, a fraction or both, with or without a unit: `59 13/16 in`, `4'`, `½`. */
export interface Part extends Span {
  amount: Ratio;
  number: NumberToken | null;
  fraction: FractionToken | null;
  unit: Unit | null;
  /** what stands between this part and the one before */
  join: JoinToken | null;
}

/** Reads one part from `at` on. */
export function readPart(
  tokens: readonly Token[],
  at: number,
  text: string,
  join: JoinToken | null,
): Read<{ part: Part; next: number }> {
  const first = tokens[at];
  if (first?.kind !== 'number' && first?.kind !== 'fraction') return refuse(numberMissing(tokens, at, text));
  const number = first.kind === 'number' ? first : null;
  const gap = number && joinsFraction(tokens, at + 1) ? 1 : 0;
  const second = number ? tokens[at + 1 + gap] : first;
  const fraction = second?.kind === 'fraction' ? second : null;
  let next = number ? at + 1 + (fraction ? 1 + gap : 0) : at + 1;
  const hyphen = tokens[next];
  if (isTightHyphen(hyphen, tokens[next - 1], tokens[next + 1]) && tokens[next + 1]?.kind === 'unit') next++;
  const end = tokens[next];
  const unit = end?.kind === 'unit' ? end.unit : null;
  if (unit) next++;

  const amount = readAmount(number, fraction, text);
  if (!amount.ok) return amount;
  const span = { start: first.start, end: tokens[next - 1]!.end };
  return read({ part: { ...span, amount: amount.value, number, fraction, unit, join }, next });
}

const joinsFraction = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at];
  return token?.kind === 'join' && (token.by === 'and' || isTightHyphen(token, tokens[at - 1], tokens[at + 1]));
};

const isTightHyphen = (token: Token | undefined, before?: Span, after?: Span): boolean =>
  token?.kind === 'join' && token.by === '-' && token.start === before?.end && token.end === after?.start;

function readAmount(number: NumberToken | null, fraction: FractionToken | null, text: string): Read<Ratio> {
  if (!fraction) return read(number!.value);
  const whole = number && (number.whole ? number.value : number.ifGrouped);
  const written = text.slice(fraction.start, fraction.end);
  if (number && !whole) {
    const all = quoted(text.slice(number.start, fraction.end));
    return refuse(`${all} has a fraction after a decimal; write either ${written} or decimals`);
  }
  const value = readFraction(fraction, whole ? whole.above : null, written);
  return value.ok && whole ? read(sum(whole, value.value)) : value;
}

function numberMissing(tokens: readonly Token[], at: number, text: string): string {
  const found = tokens[at];
  if (found)
    return `${quoted(text.slice(found.start, found.end))} stands where a number should; write a length such as 4' 11 13/16"`;
  return `${quoted(text)} breaks off; write the number that should follow`;
}

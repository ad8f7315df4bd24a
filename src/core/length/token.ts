import { type Decimal, readDecimal } from './decimal';
import { quoted, type Read, read, refuse } from './refusal';
import { type Unit, unitWritten } from './unit';

/** Where a token stands in the folded text. */
export interface Span {
  start: number;
  end: number;
}

export type NumberToken = Span & Decimal & { kind: 'number'; spoken: boolean };
export type FractionToken = Span & { kind: 'fraction'; above: number; below: number };
export type UnitToken = Span & { kind: 'unit'; unit: Unit };
/** A sign at the start, what joins two parts further on. */
export type JoinToken = Span & { kind: 'join'; by: '-' | '+' | ',' | 'and' };
/** What a length is made of once words have been turned into figures. */
export type Token = NumberToken | FractionToken | UnitToken | JoinToken;

export type WordToken = Span & { kind: 'word'; word: string };
/** `16ths`, `32nd` */
export type OrdinalToken = Span & { kind: 'ordinal'; below: number };
export type RawToken = Token | WordToken | OrdinalToken;

const SPACE = /\s*/y;
const END = /\.?\s*$/y;

/** How a piece is recognised, in the order tried, and what it becomes. */
const RULES: [RegExp, (piece: RegExpExecArray, span: Span) => Read<RawToken>][] = [
  [
    /(\d+)\s*\/\s*(\d+)(?:(?:st|nd|rd|th)s?(?!\p{L}))?(?![.,]?\d)/uy,
    ([, above, below], span) => read({ ...span, kind: 'fraction', above: Number(above), below: Number(below) }),
  ],
  [/(\d+)(?:st|nd|rd|th)s?(?!\p{L})/uy, ([, below], span) => read({ ...span, kind: 'ordinal', below: Number(below) })],
  [/\d(?:[\d.,]*\d)?|\.\d+/y, ([figures], span) => numberToken(figures, span)],
  [/\p{L}+(?:-\p{L}+)*|['"]/uy, ([word], span) => read(wordToken(word, span))],
  [/[-+,&]/y, ([sign], span) => read({ ...span, kind: 'join', by: sign === '&' ? 'and' : (sign as '-' | '+' | ',') })],
];

/** Cuts folded text into tokens. */
export function tokenize(text: string): Read<RawToken[]> {
  const tokens: RawToken[] = [];
  let at = 0;
  const match = (pattern: RegExp) => {
    pattern.lastIndex = at;
    return pattern.exec(text);
  };
  while (true) {
    at += match(SPACE)![0].length;
    if (match(END)) return read(tokens);
    const token = firstMatch(match, at) ?? refuse(strayMark(text, at));
    if (!token.ok) return token;
    tokens.push(token.value);
    at = token.value.end + (token.value.kind === 'unit' && text[token.value.end] === '.' ? 1 : 0);
  }
}

function firstMatch(match: (pattern: RegExp) => RegExpExecArray | null, start: number): Read<RawToken> | null {
  for (const [pattern, become] of RULES) {
    const piece = match(pattern);
    if (piece) return become(piece, { start, end: start + piece[0].length });
  }
  return null;
}

function numberToken(figures: string, span: Span): Read<RawToken> {
  const decimal = readDecimal(figures);
  return decimal.ok ? read({ ...span, ...decimal.value, kind: 'number', spoken: false }) : decimal;
}

/** A unit where the word stands for one. */
export function wordToken(word: string, span: Span): UnitToken | WordToken {
  const unit = unitWritten(word);
  return unit ? { ...span, kind: 'unit', unit } : { ...span, kind: 'word', word };
}

function strayMark(text: string, at: number): string {
  if (text[at] === '/') {
    return `${quoted(text)} has a fraction that is not two whole numbers; write it like 13/16`;
  }
  const mark = String.fromCodePoint(text.codePointAt(at)!);
  return `${quoted(mark)} does not belong in a length; write figures, fractions and a unit only`;
}

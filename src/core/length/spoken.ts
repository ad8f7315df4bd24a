import { denominatorOf, isNumberWord } from './numberWords';
import { ratio } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';
import { readSpokenNumber } from './spokenNumber';
import { type RawToken, type Token, type WordToken, wordToken } from './token';

/** What a rule made of the tokens from `at` on, and where the next rule goes on. */
type Step = { made: Token[]; next: number };

/**
 * Turns words into figures as they are dictated: `fifty nine and thirteen sixteenths`, `a quarter inch`,
 * `59 and 13 16ths`, `one point five metres`.
 * @param text the folded text that the tokens were cut from
 */
export function readWords(raw: readonly RawToken[], text: string): Read<Token[]> {
  const tokens = joinDenominators(raw.flatMap(splitAtHyphens));
  const out = impliedOne(tokens, text);
  for (let at = 0; at < tokens.length; ) {
    const step =
      takeSign(tokens, at) ??
      takeAnd(tokens, at) ??
      takeArticle(tokens, at, out.at(-1)) ??
      takeCountedFraction(tokens, at) ??
      takeFigures(tokens, at);
    const taken: Read<Step> = step ? read(step) : takeSpokenNumber(tokens, at, text, out.at(-1));
    if (!taken.ok) return taken;
    out.push(...taken.value.made);
    at = taken.value.next;
  }
  return read(out);
}

/** `thirteen-sixteenths` as two words; `fifty-nine` and `thirty-seconds` stay one. */
function splitAtHyphens(token: RawToken): RawToken[] {
  if (token.kind !== 'word' || isNumberWord(token.word) || denominatorOf(token.word)) return [token];
  let { start } = token;
  return token.word.split('-').map((word) => {
    const span = { start, end: start + word.length };
    start = span.end + 1;
    return wordToken(word, span);
  });
}

/** `thirty seconds` and `sixty fourths` as one word each. */
function joinDenominators(tokens: RawToken[]): RawToken[] {
  const out: RawToken[] = [];
  for (const token of tokens) {
    const before = out.at(-1);
    const joined = token.kind === 'word' && before?.kind === 'word' ? `${before.word}-${token.word}` : '';
    if (denominatorOf(joined)) out.splice(-1, 1, { kind: 'word', word: joined, start: before!.start, end: token.end });
    else out.push(token);
  }
  return out;
}

/** The one that is not said in `inch and a quarter`. */
function impliedOne([first, second]: RawToken[], text: string): Token[] {
  if (first?.kind !== 'unit' || !isWord(second, 'and')) return [];
  if (!/^(?:inch|foot|met(?:re|er))$/.test(text.slice(first.start, first.end))) return [];
  return [{ kind: 'number', start: first.start, end: first.start, value: ratio(1), whole: true, spoken: true }];
}

function takeSign(tokens: RawToken[], at: number): Step | null {
  const token = tokens[at]!;
  if (at > 0 || !isWord(token, 'minus', 'negative')) return null;
  return { made: [{ kind: 'join', by: '-', start: token.start, end: token.end }], next: at + 1 };
}

function takeAnd(tokens: RawToken[], at: number): Step | null {
  const token = tokens[at]!;
  if (!isWord(token, 'and')) return null;
  return { made: [{ kind: 'join', by: 'and', start: token.start, end: token.end }], next: at + 1 };
}

/** Leaves out `of an` and `an` between a fraction and its unit. */
function takeArticle(tokens: RawToken[], at: number, before: Token | undefined): Step | null {
  if (before?.kind !== 'fraction') return null;
  const article = isWord(tokens[at], 'of') ? at + 1 : at;
  if (!isWord(tokens[article], 'a', 'an') || tokens[article + 1]?.kind !== 'unit') return null;
  return { made: [], next: article + 1 };
}

/** `13 sixteenths`, `13 16ths` */
function takeCountedFraction(tokens: RawToken[], at: number): Step | null {
  const count = tokens[at]!;
  const end = tokens[at + 1];
  const below = belowOf(end);
  if (count.kind !== 'number' || !count.whole || end === undefined || below === undefined) return null;
  const above = count.value.above;
  return { made: [{ kind: 'fraction', start: count.start, end: end.end, above, below }], next: at + 2 };
}

function takeFigures(tokens: RawToken[], at: number): Step | null {
  const token = tokens[at]!;
  return token.kind === 'word' || token.kind === 'ordinal' ? null : { made: [token], next: at + 1 };
}

function takeSpokenNumber(tokens: RawToken[], at: number, text: string, before: Token | undefined): Read<Step> {
  const run: WordToken[] = [];
  let next = at;
  for (let token = tokens[next]; isPartOfNumber(token); token = tokens[++next]) run.push(token);
  const end = tokens[next];
  const below = belowOf(end);
  if (end !== undefined && below !== undefined) {
    const made = readSpokenNumber(run, text, { start: end.start, end: end.end, below });
    return made.ok ? read({ made: made.value, next: next + 1 }) : made;
  }
  while (isWord(run.at(-1), 'and')) {
    run.pop();
    next--;
  }
  const counted = end?.kind === 'unit' || run.some(({ word }) => isNumberWord(word));
  if (run.length > 0 && counted) {
    const made = readSpokenNumber(run, text);
    return made.ok ? read({ made: made.value, next }) : made;
  }
  const odd = tokens[next] ?? tokens[at]!;
  const piece = quoted(text.slice(odd.start, odd.end));
  return refuse(
    before?.kind === 'number' || before?.kind === 'fraction'
      ? `${piece} is not a unit known here; use in, ft, mm, cm or m`
      : `${piece} is not understood; write a length such as 59 13/16 in, or say “fifty nine and thirteen sixteenths”`,
  );
}

const isWord = (token: RawToken | undefined, ...words: string[]): boolean =>
  token?.kind === 'word' && words.includes(token.word);

const isPartOfNumber = (token: RawToken | undefined): token is WordToken =>
  token?.kind === 'word' && (isNumberWord(token.word) || ['a', 'an', 'and', 'point'].includes(token.word));

function belowOf(token: RawToken | undefined): number | undefined {
  if (token?.kind === 'ordinal') return token.below;
  return token?.kind === 'word' ? denominatorOf(token.word) : undefined;
}

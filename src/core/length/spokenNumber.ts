import { decimalFromWords, wholeFromWords } from './numberWords';
import { type Ratio, ratio } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';
import type { FractionToken, NumberToken, Span, Token, WordToken } from './token';

/** The word that says what the fraction divides by: `sixteenths`. */
type Denominator = Span & { below: number };

/** Reads a run of number words, and the fraction that it ends in where a denominator follows. */
export function readSpokenNumber(run: readonly WordToken[], text: string, denominator?: Denominator): Read<Token[]> {
  if (denominator) return readWithFraction(run, text, denominator);
  const words = run.map(({ word }) => word);
  const whole = wholeFromWords(words);
  if (whole !== null) return read([numberToken(run, ratio(whole), true)]);
  const decimal = words.includes('point') ? decimalFromWords(words) : null;
  if (decimal !== null) return read([numberToken(run, decimal, false)]);
  return refuse(
    `${quoted(text.slice(run[0]!.start, run.at(-1)!.end))} is not one number; say it in full or write figures`,
  );
}

/**
 * `twenty three sixteenths` can only be 20 3/16, but `twenty three thirty-seconds` is 23/32 as well as 20 3/32: every
 * cut between whole number and numerator is tried, and two that make sense are refused.
 */
function readWithFraction(run: readonly WordToken[], text: string, denominator: Denominator): Read<Token[]> {
  const all = text.slice((run[0] ?? denominator).start, denominator.end);
  const readings = new Map<string, Token[]>();
  let improper = false;
  for (let cut = 0; cut <= run.length; cut++) {
    const whole = wholeBefore(run.slice(0, cut));
    const above = numerator(run.slice(cut), run[cut - 1], denominator);
    if (whole === undefined || above === null) continue;
    const { below, end } = denominator;
    const fraction: FractionToken = { kind: 'fraction', start: (run[cut] ?? denominator).start, end, above, below };
    const figures = `${whole ? `${whole.value.above} ` : ''}${above}/${below}`;
    if (above >= below) improper = true;
    else if (!readings.has(figures)) readings.set(figures, whole ? [whole, fraction] : [fraction]);
  }
  const [one, other] = [...readings.keys()];
  if (one !== undefined && other !== undefined) {
    return refuse(`${quoted(all)} can mean ${one} or ${other}; say “and” after the whole number, or write figures`);
  }
  if (one !== undefined) return read(readings.get(one)!);
  const fault = improper ? 'has a fraction that is no less than a whole' : 'is not one number';
  return refuse(`${quoted(all)} ${fault}; say it like “fifty nine and a half”`);
}

/** The whole number before the numerator: null where there is none, undefined where the words are no number. */
function wholeBefore(words: readonly WordToken[]): NumberToken | null | undefined {
  const counted = words.at(-1)?.word === 'and' ? words.slice(0, -1) : words;
  const onlyArticle = counted.length === 1 && /^an?$/.test(counted[0]!.word);
  if (words.length === 0 || (onlyArticle && counted === words)) return null;
  const whole = wholeFromWords(counted.map(({ word }) => word));
  return whole === null ? undefined : numberToken(counted, ratio(whole), true);
}

/** The numerator; one where a bare `half` or `quarter` follows `and` or nothing. */
function numerator(words: readonly WordToken[], before: WordToken | undefined, { below }: Denominator): number | null {
  if (words.length > 0) return wholeFromWords(words.map(({ word }) => word));
  const mayStandAlone = before === undefined || /^(?:and|an?)$/.test(before.word);
  return mayStandAlone && (below === 2 || below === 4) ? 1 : null;
}

const numberToken = (words: readonly WordToken[], value: Ratio, whole: boolean): NumberToken => ({
  kind: 'number',
  start: words[0]!.start,
  end: words.at(-1)!.end,
  value,
  whole,
  spoken: true,
});

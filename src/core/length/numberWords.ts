import { type Ratio, ratio } from './ratio';

const TEENS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen';
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety';

const units = new Map(TEENS.split(' ').map((word, value) => [word, value]));
const tens = new Map(TENS.split(' ').map((word, i) => [word, 20 + 10 * i]));
const compounds = new Map(
  [...tens].flatMap(([ten, value]) => [...units].slice(1, 10).map(([one, more]) => [`${ten}-${one}`, value + more])),
);
const BELOW_100 = new Map([...units, ...tens, ...compounds]);

const DENOMINATORS = new Map(
  Object.entries({
    half: 2,
    halves: 2,
    third: 3,
    quarter: 4,
    fourth: 4,
    fifth: 5,
    sixth: 6,
    seventh: 7,
    eighth: 8,
    eights: 8,
    ninth: 9,
    tenth: 10,
    twelfth: 12,
    sixteenth: 16,
    twentieth: 20,
    'thirty-second': 32,
    'sixty-fourth': 64,
  }).flatMap(([word, below]) => [
    [word, below],
    [`${word}s`, below],
  ]),
);

export const isNumberWord = (word: string): boolean =>
  BELOW_100.has(word) || word === 'hundred' || word === 'thousand' || word === 'oh';

/** The denominator that a word such as `sixteenths` stands for. */
export const denominatorOf = (word: string): number | undefined => DENOMINATORS.get(word);

/** `one hundred and two` as 102; null where the words are not one whole number. */
export function wholeFromWords(words: readonly string[]): number | null {
  if (words.length === 1 && (words[0] === 'a' || words[0] === 'an')) return 1;
  return scaled(words, 'thousand', 1000, (tail) => scaled(tail, 'hundred', 100, below100));
}

function scaled(
  words: readonly string[],
  name: string,
  scale: number,
  smaller: (words: readonly string[]) => number | null,
): number | null {
  const cut = words.indexOf(name);
  if (cut < 0) return smaller(words);
  const head = words.slice(0, cut);
  const count = head.length === 0 || (head.length === 1 && head[0] === 'a') ? 1 : smaller(head);
  const rest = words.slice(cut + 1);
  if (rest.length === 0) return count === null ? null : count * scale;
  const tail = smaller(rest[0] === 'and' ? rest.slice(1) : rest);
  return count === null || tail === null || tail >= scale ? null : count * scale + tail;
}

function below100(words: readonly string[]): number | null {
  const [first = '', second, ...more] = words;
  if (second === undefined) return BELOW_100.get(first) ?? null;
  const one = units.get(second);
  const ten = tens.get(first);
  return more.length === 0 && ten !== undefined && one !== undefined && one > 0 && one < 10 ? ten + one : null;
}

/** `one point five` as 15/10; null where the words are no such number. */
export function decimalFromWords(words: readonly string[]): Ratio | null {
  const cut = words.indexOf('point');
  const head = cut === 0 ? 0 : wholeFromWords(words.slice(0, cut));
  const after = words.slice(cut + 1);
  const pair = wholeFromWords(after);
  const digits = pair !== null && pair >= 10 && pair < 100 ? String(pair) : digitsFromWords(after);
  if (head === null || digits === null) return null;
  return ratio(head * 10 ** digits.length + Number(digits), 10 ** digits.length);
}

function digitsFromWords(words: readonly string[]): string | null {
  const digits = words.map((word) => (word === 'oh' ? 0 : units.get(word)));
  const sound = digits.length > 0 && digits.length < 10 && digits.every((digit) => digit !== undefined && digit < 10);
  return sound ? digits.join('') : null;
}

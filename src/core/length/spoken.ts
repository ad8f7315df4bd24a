import { type DisplayUnit, MM_PER_INCH } from './unit';

const UNITS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const PARTS: Record<string, number> = {
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fourth: 4,
  fourths: 4,
  eighth: 8,
  eighths: 8,
  sixteenth: 16,
  sixteenths: 16,
  'thirty-second': 32,
  'thirty-seconds': 32,
  'sixty-fourth': 64,
  'sixty-fourths': 64,
};
const MM_PER: Record<string, number> = { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, ft: 12 * MM_PER_INCH };

/**
 * Reads a dictated length, `fifty nine and thirteen sixteenths`, `four ft eleven and a half`, `one point five m`;
 * digits may stand among the words. Expects text as `plainText` leaves it.
 * @returns mm, a sentence on the word that is not understood, or null where no number is said
 */
export function spokenLength(text: string, unit: DisplayUnit): number | string | null {
  const words = text
    .replace(/\b(thirty|sixty)[ -](seconds?|fourths?)\b/g, '$1-$2')
    .split(/ +/)
    .flatMap((word) => (PARTS[word] === undefined ? word.split('-') : [word]))
    .filter((word) => word !== '' && word !== 'of');
  const lastUnit = words.findLast((word) => MM_PER[word] !== undefined);
  const strange = words.find((word) => !understood(word));
  if (strange !== undefined) return `"${strange}" is not understood; say it like fifty nine and thirteen sixteenths.`;

  let total = 0;
  let said: string[] = [];
  let any = false;
  for (const word of words) {
    if (MM_PER[word] === undefined) {
      said.push(word);
      continue;
    }
    const number = spokenNumber(said);
    if (Number.isNaN(number)) return jumbled(said);
    if (number !== null) {
      total += number * MM_PER[word]!;
      any = true;
    }
    said = [];
  }
  const number = spokenNumber(said);
  if (Number.isNaN(number)) return jumbled(said);
  if (number !== null) {
    // What follows feet is inches; else the display's own unit. A fraction said after the unit belongs to that unit.
    const trailing = lastUnit === undefined ? unit : lastUnit === 'ft' ? 'in' : lastUnit;
    total += number * MM_PER[trailing]!;
    any = true;
  }
  return any ? total : null;
}

const jumbled = (words: string[]): string =>
  `"${words.join(' ')}" is not one number; say it like fifty nine and thirteen sixteenths.`;

const understood = (word: string): boolean =>
  UNITS.includes(word) ||
  TENS.includes(word) ||
  PARTS[word] !== undefined ||
  MM_PER[word] !== undefined ||
  ['a', 'an', 'and', 'hundred', 'thousand', 'point'].includes(word) ||
  /^\d+(\.\d+)?$/.test(word) ||
  /^\d+\/\d+$/.test(word);

/** Whole number, decimal and fraction from words; null for none, NaN where the words make no one number. */
function spokenNumber(words: string[]): number | null {
  if (words.every((word) => word === 'and')) return null;
  const part = words.findIndex((word) => PARTS[word] !== undefined);
  if (part < 0) {
    const slash = words.findIndex((word) => word.includes('/'));
    if (slash < 0) return cardinal(words);
    const [top, bottom] = words[slash]!.split('/').map(Number);
    return (cardinal(words.slice(0, slash)) ?? 0) + top! / bottom!;
  }
  // The count of parts is what stands after the last "and", or all of it: "three quarters", "two and three eighths".
  const joint = words.lastIndexOf('and', part);
  const count = words.slice(joint + 1, part);
  const whole = joint < 0 ? [] : words.slice(0, joint);
  return (cardinal(whole) ?? 0) + (cardinal(count) ?? 1) / PARTS[words[part]!]!;
}

function cardinal(words: string[]): number | null {
  const said = words.filter((word) => word !== 'and');
  if (said.length === 0) return null;
  const point = said.indexOf('point');
  if (point >= 0) {
    const digits = said
      .slice(point + 1)
      .map((word) => (UNITS.includes(word) ? UNITS.indexOf(word) : word))
      .join('');
    return Number(`${cardinal(said.slice(0, point)) ?? 0}.${digits}`);
  }
  let total = 0;
  let current = 0;
  let room = Number.POSITIVE_INFINITY;
  for (const word of said) {
    if (word === 'thousand' || word === 'hundred') {
      const factor = word === 'thousand' ? 1000 : 100;
      if (factor === 1000) {
        total += (current || 1) * factor;
        current = 0;
      } else current = (current || 1) * factor;
      room = factor;
      continue;
    }
    const value = word === 'a' || word === 'an' ? 1 : wordValue(word);
    if (value >= room) return Number.NaN;
    current += value;
    room = TENS.includes(word) ? 10 : 1;
  }
  return total + current;
}

const wordValue = (word: string): number =>
  TENS.includes(word) ? (TENS.indexOf(word) + 2) * 10 : UNITS.includes(word) ? UNITS.indexOf(word) : Number(word);

import { plainText } from './plainText';
import { spokenLength } from './spoken';
import { type DisplayUnit, MM_PER_INCH } from './unit';

export type ParsedLength = { ok: true; mm: number } | { ok: false; message: string };

/** Longer than this is a slip of the finger, mm. */
const LONGEST = 100_000;
/** Finest fraction on a rule or tape. */
const FINEST = 64;

const MM_PER_UNIT: Record<string, number> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
};

const NUMBER = String.raw`\d+(?:\.\d*)?|\.\d+`;
/** whole, whole and fraction, or fraction alone */
const MIXED = new RegExp(String.raw`^(?:(${NUMBER})(?:[ -]+|$))?(?:(\d+) ?\/ ?(\d+))?$`);
const FEET = new RegExp(String.raw`^(${NUMBER}) ?ft(?:[ -]+|$)(.*)$`);
const UNIT = /^(.*?) ?(mm|cm|m|in|ft)$/;

/**
 * Reads a length as people write or say it: `59 13/16`, `59-13/16"`, `4' 11 13/16`, `151.9 cm`, `1519`, `59½`,
 * `fifty nine and thirteen sixteenths`. Bare numbers are in `unit`; a decimal comma is a point.
 * @returns millimetres, or a sentence that says what is wrong and what to write instead
 */
export function parseLength(text: string, unit: DisplayUnit): ParsedLength {
  const plain = plainText(text);
  if (plain === '') return refused(`Nothing is written here; write a length such as ${example(unit)}.`);
  const negative = /^(-|minus )/.test(plain);
  const body = plain.replace(/^([-+]|minus ) ?/, '');
  const parsed = /[a-z]{3,}/.test(body) ? spokenLength(body, unit) : written(body, unit);
  if (parsed === null) return refused(`"${text.trim()}" is not a length; write it like ${example(unit)}.`);
  if (typeof parsed === 'string') return refused(parsed);
  if (!(parsed <= LONGEST)) return refused(`"${text.trim()}" is over 100 m; check the unit.`);
  return { ok: true, mm: negative ? -parsed : parsed };
}

/** mm, a sentence on what is wrong, or null where it is no length at all. */
function written(body: string, unit: DisplayUnit): number | string | null {
  const feet = FEET.exec(body);
  if (feet !== null) {
    const inches = feet[2]!.replace(/ ?in$/, '');
    const rest = inches === '' ? 0 : mixedNumber(inches);
    return combine(Number(feet[1]), rest, (a, b) => (a * 12 + b) * MM_PER_INCH);
  }
  const suffixed = UNIT.exec(body);
  const number = mixedNumber(suffixed === null ? body : suffixed[1]!);
  const factor = MM_PER_UNIT[suffixed === null ? unit : suffixed[2]!]!;
  return combine(number, 0, (a) => a * factor);
}

function combine(
  a: number | string | null,
  b: number | string | null,
  join: (a: number, b: number) => number,
): number | string | null {
  if (typeof a === 'number' && typeof b === 'number') return join(a, b);
  return typeof a === 'string' ? a : typeof b === 'string' ? b : null;
}

function mixedNumber(text: string): number | string | null {
  const match = MIXED.exec(text.trim());
  if (match === null || (match[1] === undefined && match[2] === undefined)) return null;
  const whole = match[1] === undefined ? 0 : Number(match[1]);
  if (match[2] === undefined) return whole;
  const [top, bottom] = [Number(match[2]), Number(match[3])];
  if (bottom === 0) return `A fraction cannot be over 0; "${match[2]}/0" needs 2, 4, 8, 16 or 32 below the line.`;
  if (bottom > FINEST)
    return `"${match[2]}/${match[3]}" is finer than a tape's 1/${FINEST}; check the figure below the line.`;
  if (match[1] !== undefined && (top >= bottom || !Number.isInteger(whole))) {
    return `"${text.trim()}" mixes a number with "${match[2]}/${match[3]}"; write a whole number and a fraction below 1, like 59 13/16.`;
  }
  return whole + top / bottom;
}

const example = (unit: DisplayUnit): string => (unit === 'in' ? '59 13/16 or 1519 mm' : '1519 or 59 13/16 in');
const refused = (message: string): ParsedLength => ({ ok: false, message });

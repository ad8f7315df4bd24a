import type { Part } from './part';
import { product, quotient, type Ratio, sum } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';
import { type DisplayUnit, GOES_INTO, LONGEST_LENGTH, MM_IN, type Unit } from './unit';

/** Adds the parts of one length, largest unit first. Gives millimetres. */
export function addUp(parts: readonly Part[], display: DisplayUnit, text: string): Read<Ratio> {
  const [first, ...more] = parts;
  const start = first!.unit ? inMillimetres(first!, first!.unit, text) : readBare(first!, display, text);
  if (!start.ok) return start;
  let total = start.value;
  for (const [i, part] of more.entries()) {
    const unit = unitAfter(parts[i]!, part, text);
    if (!unit.ok) return unit;
    const value = inMillimetres(part, unit.value, text);
    if (!value.ok) return value;
    total = sum(total, value.value);
  }
  return read(total);
}

/** A part without a unit, which stands alone. */
function readBare(part: Part, display: DisplayUnit, text: string): Read<Ratio> {
  const { number, fraction, amount } = part;
  const written = quoted(text.slice(part.start, part.end));
  if (display === 'mm' && fraction && fraction.below !== 2) {
    const inches = `${number ? `${number.value.above} ` : ''}${fraction.above}/${fraction.below} in`;
    const mm = quotient(product(amount, MM_IN.in)).toFixed(1);
    return refuse(`${written} looks like inches where millimetres are shown; write ${inches} (${mm} mm) or decimals`);
  }
  if (number?.spoken && !fraction && amount.above !== 0) {
    return refuse(`${written} needs its unit when it is spoken; say inches or millimetres after it, or write figures`);
  }
  return inMillimetres(part, display, text);
}

/** The unit of a part that follows another: smaller, and inches where none is written after feet. */
function unitAfter(before: Part, part: Part, text: string): Read<Unit> {
  const both = quoted(text.slice(before.start, part.end));
  const written = quoted(text.slice(part.start, part.end));
  if (!before.unit) return refuse(twoNumbers(before, part, text));
  if (before.unit === 'in' && !before.fraction && !part.number && (part.unit ?? 'in') === 'in') {
    return before.number?.whole ? read('in') : refuse(`${both} has a fraction after a decimal; write one or the other`);
  }
  if (before.unit === 'ft' && !part.unit && !part.number && part.join?.by === 'and') {
    return refuse(`${both} can mean a part of a foot or of an inch; write the unit after ${written}`);
  }
  const smaller = Object.keys(GOES_INTO[before.unit]);
  const unit = part.unit ?? (before.unit === 'ft' ? 'in' : null);
  if (!unit && smaller.length > 0) return refuse(`${written} needs a unit; write ${smaller.join(' or ')} after it`);
  const most = unit ? GOES_INTO[before.unit][unit] : undefined;
  if (!unit || most === undefined) {
    return refuse(`${both} does not add up to one length; write one unit, or feet and inches such as 4' 11 13/16"`);
  }
  if (before.fraction || !before.number?.whole) {
    return refuse(
      `${both} has a part of a ${before.unit} before ${unit}; write whole ${before.unit}, or one unit alone`,
    );
  }
  if (quotient(part.amount) >= most) {
    return refuse(`${written} is no less than 1 ${before.unit}; keep it below ${most} ${unit}`);
  }
  return read(unit);
}

function twoNumbers(before: Part, part: Part, text: string): string {
  if (part.join?.by === '-') {
    return `${quoted(text.slice(before.start, part.end))} reads as a difference; write the one length meant, such as 59-13/16`;
  }
  const [first, second] = [before, part].map(({ start, end }) => quoted(text.slice(start, end)));
  return `${second} cannot follow ${first} without a unit between; write one length such as 59 13/16 or 4' 11 13/16"`;
}

function inMillimetres(part: Part, unit: Unit, text: string): Read<Ratio> {
  const value = product(part.amount, MM_IN[unit]);
  const { ifGrouped, whole } = part.number ?? {};
  if (!ifGrouped || part.fraction || whole) return read(value);
  if (quotient(product(ifGrouped, MM_IN[unit])) > LONGEST_LENGTH) return read(value);
  const written = text.slice(part.number!.start, part.number!.end);
  const decimal = written.replace(',', '.');
  return refuse(`${quoted(written)} can mean ${decimal} or ${ifGrouped.above}; write one of these`);
}

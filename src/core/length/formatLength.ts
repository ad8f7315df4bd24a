import { ratio, reduced } from './ratio';
import { nearestStep } from './roundToStep';
import { type DisplayUnit, MM_PER_INCH } from './unit';

/** Denominator that inch fractions are rounded to. */
export type FractionDenominator = 16 | 32;

export interface LengthFormat {
  unit: DisplayUnit;
  /** 16 unless stated; a ± goes to 32 unless stated */
  denominator?: FractionDenominator;
  /** feet and inches from one foot up: `4' 11 13/16"`; no effect on mm */
  feet?: boolean;
  /** leaves the unit's mark off, as in a field that shows it beside */
  bare?: boolean;
}

/** A length as it is printed. */
export interface PrintedLength {
  text: string;
  /** what the text says, mm */
  mm: number;
  /** what rounding did, mm: the printed length less the true one */
  error: number;
}

/** Steps in a millimetre that is printed. */
const TENTHS = 10;

/**
 * Prints a length: inches to the nearest 1/16 or 1/32, fractions reduced and carried, or mm to one decimal. A tie is
 * rounded away from zero. What is not finite prints as a dash.
 */
export function printLength(mm: number, format: LengthFormat): PrintedLength {
  if (!Number.isFinite(mm)) return { text: '–', mm, error: Number.NaN };
  const perUnit = format.unit === 'mm' ? TENTHS : (format.denominator ?? 16);
  const unit = format.unit === 'mm' ? 1 : MM_PER_INCH;
  const steps = nearestStep((mm / unit) * perUnit);
  const shown = (steps * unit) / perUnit;
  return { text: (steps < 0 ? '−' : '') + stepsText(Math.abs(steps), format, perUnit), mm: shown, error: shown - mm };
}

/** Prints a length: `59 13/16"`, `4' 11 13/16"` or `1519.2 mm`, with or without the unit mark. */
export const formatLength = (mm: number, format: LengthFormat): string => printLength(mm, format).text;

/** Text of a whole number of steps, none below zero, of which `perUnit` make an inch or a millimetre. */
export function stepsText(steps: number, { unit, feet = false, bare = false }: LengthFormat, perUnit: number): string {
  if (unit === 'mm') return (steps / perUnit).toFixed(1) + (bare ? '' : ' mm');
  const perFoot = feet && steps >= 12 * perUnit ? 12 * perUnit : Number.POSITIVE_INFINITY;
  const whole = Math.floor(steps / perFoot);
  const inches = mixedNumber(whole > 0 ? steps % perFoot : steps, perUnit);
  return (whole > 0 ? `${whole}' ` : '') + inches + (bare ? '' : '"');
}

/** A number of equal parts of a whole as `59 13/16`, in lowest terms. */
export function mixedNumber(parts: number, perWhole: number): string {
  const whole = Math.floor(parts / perWhole);
  const { above, below } = reduced(ratio(parts % perWhole, perWhole));
  if (above === 0) return String(whole);
  return `${whole > 0 ? `${whole} ` : ''}${above}/${below}`;
}

import { type LengthFormat, stepsText } from './formatLength';
import { stepAbove } from './roundToStep';
import { MM_PER_INCH } from './unit';

/**
 * Prints a half-width as `±1/32"` or `±0.8 mm`, rounded up so that it never claims too much; above zero it is at least
 * one step. What is not finite, as where nothing measures, prints as `±?`.
 * @param mm half-width, its sign ignored
 */
export function formatPlusMinus(mm: number, format: LengthFormat): string {
  if (!Number.isFinite(mm)) return '±?';
  const perUnit = format.unit === 'mm' ? 10 : (format.denominator ?? 32);
  const steps = stepAbove((Math.abs(mm) / (format.unit === 'mm' ? 1 : MM_PER_INCH)) * perUnit);
  return `±${stepsText(steps, { ...format, feet: false }, perUnit)}`;
}

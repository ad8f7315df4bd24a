import { type DisplayUnit, type FractionDenominator, MM_PER_INCH } from './unit';

export interface LengthFormat {
  unit: DisplayUnit;
  /** default 16 */
  denominator?: FractionDenominator;
  /** decimals of a millimetre, default 1 */
  decimals?: 0 | 1 | 2;
  /** 12 in and more as feet and inches */
  feet?: boolean;
  /** leaves out the unit mark */
  bare?: boolean;
}

/** Inches as sixteenths or thirty-seconds. Ties go away from zero: a half sixteenth is a whole one (ours to choose; no standard says). */
export function toFraction(
  mm: number,
  denominator: FractionDenominator,
): { parts: number /** printed less true, mm */; error: number } {
  const exact = (mm / MM_PER_INCH) * denominator;
  const parts = Math.sign(exact) * Math.round(Math.abs(exact) + 1e-9);
  return { parts, error: (parts / denominator) * MM_PER_INCH - mm };
}

/** Prints a length: `59 13/16"`, `4' 11 13/16"` or `1519.2 mm`. */
export function formatLength(mm: number, format: LengthFormat): string {
  if (!Number.isFinite(mm)) return '–';
  if (format.unit === 'mm') {
    const scale = 10 ** (format.decimals ?? 1);
    const rounded = (Math.sign(mm) * Math.round(Math.abs(mm) * scale + 1e-9)) / scale;
    return `${signed(rounded, String(Math.abs(rounded)))}${format.bare === true ? '' : ' mm'}`;
  }
  const denominator = format.denominator ?? 16;
  const { parts } = toFraction(mm, denominator);
  const magnitude = Math.abs(parts);
  const feet = format.feet === true ? Math.floor(magnitude / (12 * denominator)) : 0;
  const inches = mixed(magnitude - feet * 12 * denominator, denominator);
  const mark = format.bare === true && feet === 0 ? '' : '"';
  return signed(parts, `${feet > 0 ? `${feet}' ` : ''}${inches}${mark}`);
}

/** Prints a half-width as `±1/32"` or `±0.8 mm`, rounded up so that it never claims too much. */
export function formatPlusMinus(mm: number, format: LengthFormat): string {
  if (!Number.isFinite(mm)) return '±?';
  const width = Math.abs(mm);
  if (format.unit === 'mm') {
    const mark = format.bare === true ? '' : ' mm';
    return width > 100 ? `±${Math.ceil(width)}${mark}` : `±${Math.ceil(width * 10 - 1e-9) / 10}${mark}`;
  }
  const parts = Math.ceil((width / MM_PER_INCH) * 32 - 1e-9);
  return `±${mixed(parts, 32)}${format.bare === true ? '' : '"'}`;
}

/** Whole and reduced fraction: 957/16 as `59 13/16`. */
function mixed(parts: number, denominator: number): string {
  const whole = Math.floor(parts / denominator);
  let top = parts % denominator;
  let bottom = denominator;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return `${whole > 0 ? `${whole} ` : ''}${top}/${bottom}`;
}

const signed = (value: number, text: string): string => (value < 0 ? `−${text}` : text);

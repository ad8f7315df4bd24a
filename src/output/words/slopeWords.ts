import { type Job, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';

/** Length over which a slope is told in inches, mm (8 ft). */
const EIGHT_FEET = 2438.4;

interface Slope {
  /** too small to be told */
  none: boolean;
  /** without a direction */
  words: string;
  /** empty where the slope is chosen */
  plusMinus: string;
}

/**
 * A slope of `perMetre` mm/m with its ±: mm per m, or the offset over 8 ft.
 * @param sd mm/m; null where the slope is chosen, not measured
 */
export function slopeWords(perMetre: number, sd: number | null, job: Job): Slope {
  const { coarse, plusMinus } = lengthsOf(job);
  const metric = job.display === 'mm';
  const told = (slope: number): string =>
    metric ? Math.abs(slope).toFixed(1) : coarse((Math.abs(slope) * EIGHT_FEET) / 1000).text;
  const over = metric ? 'mm/m' : 'in 8 ft';
  const half = sd === null ? '' : metric ? `±${(Z_95 * sd).toFixed(1)}` : plusMinus((sd * EIGHT_FEET) / 1000).text;
  return {
    none: told(perMetre) === told(0),
    words: [told(perMetre), half, over].filter((word) => word !== '').join(' '),
    plusMinus: half && `${half} ${over}`,
  };
}

import { type DisplayUnit, formatLength, formatPlusMinus, type Job, MM_PER_INCH, Z_95 } from '../../core';
import type { Measure } from './drawing';

/** A cut is scribed on dry fit where its ± at 95 % is more than this, mm (1/32 in). */
export const SCRIBE_BEYOND = MM_PER_INCH / 32;

/** What was set, not measured, has no ±, mm. */
const EXACT = 1e-3;

/** Prints lengths in the unit that a job is shown in. */
export interface Lengths {
  unit: DisplayUnit;
  /** to 1/32 in */
  fine: (mm: number) => Measure;
  /** to 1/16 in */
  coarse: (mm: number) => Measure;
  /** 95 % half-width from a standard deviation; no words where there is none */
  plusMinus: (sd: number) => Measure;
  /** the next whole 1/16 in or mm above */
  roundedUp: (mm: number) => Measure;
}

export function lengthsOf(job: Job): Lengths {
  const unit = job.display;
  const step = unit === 'in' ? MM_PER_INCH / 16 : 1;
  const coarse = (mm: number) => ({ mm, text: formatLength(mm, { unit, denominator: 16 }) });
  return {
    unit,
    fine: (mm) => ({ mm, text: formatLength(mm, { unit, denominator: 32 }) }),
    coarse,
    plusMinus: (sd) => {
      const mm = Z_95 * sd;
      return { mm, text: mm < EXACT ? '' : formatPlusMinus(mm, { unit, denominator: 32 }) };
    },
    roundedUp: (mm) => coarse(Math.ceil(mm / step - 1e-9) * step),
  };
}

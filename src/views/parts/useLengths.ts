import { useMemo } from 'react';
import { type DisplayUnit, editableLength, formatLength, formatPlusMinus, Z_95 } from '../../core';
import { useDraft } from '../../job';

export interface Lengths {
  unit: DisplayUnit;
  /** a length with its mark, to 1/16 in or a tenth of a mm */
  text(mm: number): string;
  /** a cut dimension or a small difference, to 1/32 in */
  fine(mm: number): string;
  /** a length as it stands in a field, without its mark */
  resting(mm: number): string;
  /** a length as it is edited, without its mark and not rounded */
  editing(mm: number): string;
  /** the 95 % half-width that belongs to a standard deviation, `±1/32"` */
  plusMinus(sd: number): string;
}

export function lengthsIn(unit: DisplayUnit): Lengths {
  const fine = (mm: number) => formatLength(mm, { unit, denominator: 32 });
  return {
    unit,
    text: (mm) => formatLength(mm, { unit, denominator: 16 }),
    fine,
    resting: (mm) => formatLength(mm, { unit, denominator: 32, bare: true }),
    editing: (mm) => editableLength(mm, unit),
    plusMinus: (sd) => formatPlusMinus(Z_95 * sd, { unit, denominator: 32 }),
  };
}

/** Lengths as the job in hand shows them. */
export function useLengths(): Lengths {
  const unit = useDraft(({ draft }) => draft.job.display);
  return useMemo(() => lengthsIn(unit), [unit]);
}

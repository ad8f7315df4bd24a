/** How lengths are shown: inches with fractions or millimetres. */
export type DisplayUnit = 'in' | 'mm';
/** Denominator that inch fractions are rounded to. */
export type FractionDenominator = 16 | 32;

/** One inch in millimetres, exact (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

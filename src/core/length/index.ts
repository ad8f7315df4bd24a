/** How lengths are shown: inches with fractions or millimetres. */
export type DisplayUnit = 'in' | 'mm';
/** Denominator that inch fractions are rounded to. */
export type FractionDenominator = 16 | 32;

/** One inch in millimetres, exact (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

export type ParsedLength = { ok: true; mm: number } | { ok: false; message: string };

/**
 * Reads a length as people write it. Bare numbers are in `unit`.
 * @returns millimetres, or a sentence that says what is wrong and what to write instead
 */
export declare function parseLength(text: string, unit: DisplayUnit): ParsedLength;

export interface LengthFormat {
  unit: DisplayUnit;
  denominator?: FractionDenominator;
}

/** Prints a length: `59 13/16"` or `1519.2 mm`, with or without the unit mark. */
export declare function formatLength(mm: number, format: LengthFormat): string;

/** Prints a half-width as `±1/32"` or `±0.8 mm`, rounded up so that it never claims too much. */
export declare function formatPlusMinus(mm: number, format: LengthFormat): string;

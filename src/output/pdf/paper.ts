import { MM_PER_INCH } from '../../core';

export type PaperName = 'a4' | 'letter' | 'a3' | 'tabloid';
/** mm, upright */
export interface Paper {
  label: string;
  width: number;
  height: number;
}

/** ISO 216 and ANSI sizes. */
export const papers: Record<PaperName, Paper> = {
  a4: { label: 'A4', width: 210, height: 297 },
  letter: { label: 'Letter', width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
  a3: { label: 'A3', width: 297, height: 420 },
  tabloid: { label: 'Tabloid', width: 11 * MM_PER_INCH, height: 17 * MM_PER_INCH },
};

/** Printer points (1/72 in) in a millimetre. */
export const POINTS_PER_MM = 72 / MM_PER_INCH;
/** Millimetres in a printer point. */
export const POINT = MM_PER_INCH / 72;

import { type Job, MM_PER_INCH } from '../../core';

export type PaperName = 'a4' | 'letter' | 'a3' | 'tabloid' | 'roll';
/** mm, upright */
export interface Paper {
  label: string;
  width: number;
  height: number;
  /** true where a page is as long as what is on it needs */
  roll?: true;
}

/** ISO 216 and ANSI sizes. */
export const papers: Record<PaperName, Paper> = {
  a4: { label: 'A4', width: 210, height: 297 },
  letter: { label: 'Letter', width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
  a3: { label: 'A3', width: 297, height: 420 },
  roll: { label: 'roll 24 in wide', width: 24 * MM_PER_INCH, height: 24 * MM_PER_INCH, roll: true },
  tabloid: { label: 'Tabloid', width: 11 * MM_PER_INCH, height: 17 * MM_PER_INCH },
};

/** Paper for pages of words: the one asked for, but no roll; else Letter for a job shown in inches, A4 otherwise. */
export function pagePaper({ display }: Pick<Job, 'display'>, asked?: PaperName): Paper {
  const usual = papers[display === 'in' ? 'letter' : 'a4'];
  return asked && !papers[asked].roll ? papers[asked] : usual;
}

/** Printer points (1/72 in) in a millimetre. */
export const POINTS_PER_MM = 72 / MM_PER_INCH;
/** Millimetres in a printer point. */
export const POINT = MM_PER_INCH / 72;

import { type Ratio, ratio } from './ratio';

/** How lengths are shown: inches with fractions or millimetres. */
export type DisplayUnit = 'in' | 'mm';

/** Units that a written length may carry. */
export type Unit = DisplayUnit | 'ft' | 'cm' | 'm';

/** One inch in millimetres, exact (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

/** Longest length read, mm: far beyond any alcove, short enough that a missing decimal point shows. */
export const LONGEST_LENGTH = 100_000;

/** Millimetres in each unit, exact. */
export const MM_IN: Record<Unit, Ratio> = {
  mm: ratio(1),
  cm: ratio(10),
  m: ratio(1000),
  in: ratio(127, 5),
  ft: ratio(1524, 5),
};

/** How often a smaller unit goes into a larger one after which it may stand: `4 ft 11 in`, `1 m 52 cm`. */
export const GOES_INTO: Record<Unit, Partial<Record<Unit, number>>> = {
  ft: { in: 12 },
  m: { cm: 100, mm: 1000 },
  cm: { mm: 10 },
  in: {},
  mm: {},
};

const WRITTEN: Record<Unit, string[]> = {
  in: ['"', 'in', 'ins', 'inch', 'inches'],
  ft: ["'", 'ft', 'foot', 'feet'],
  mm: ['mm', 'mms', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  cm: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
};

const UNITS = new Map(Object.entries(WRITTEN).flatMap(([unit, words]) => words.map((word) => [word, unit as Unit])));

/** The unit that a mark or a word in small letters stands for. */
export const unitWritten = (word: string): Unit | undefined => UNITS.get(word);

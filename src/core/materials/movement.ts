import type { Supplies } from '../job-file';

/** Coefficient of linear thermal expansion of gypsum board, 1/K (about 9e-6 per °F, GA-235; from memory). */
export const GYPSUM_EXPANSION = 16e-6;

/**
 * Difference in length between a sheet and the wall behind it over a change of temperature, mm.
 * @param length mm
 * @param expansion coefficient of the sheet, 1/K
 */
export const movement = (length: number, expansion: number, swing: number): number =>
  Math.abs(expansion - GYPSUM_EXPANSION) * length * swing;

/**
 * Width that a joint needs to take a movement, mm: movement over the sealant's movement capability, plus tolerance
 * (ASTM C1472; formula from memory).
 * @param capability share of its width that the sealant can move, 0.25 for class 25
 */
export const widthForMovement = (moves: number, capability: number, tolerance = 0): number =>
  moves / capability + tolerance;

/** Width that movement asks of a joint beside a sheet of the given length, mm. */
export const widthBeside = (length: number, { expansion, swing, capability }: Supplies['movement']): number =>
  widthForMovement(movement(length, expansion * 1e-6, swing), capability);

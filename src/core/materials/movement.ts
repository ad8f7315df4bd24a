import type { Supplies } from '../job-file';

/** Coefficient of linear thermal expansion of gypsum board, 1/K (about 9e-6 per °F, GA-235; from memory). */
export const GYPSUM_EXPANSION = 16e-6;
/** Growth of gypsum board with relative humidity, per % RH (GA-235; from memory). */
export const GYPSUM_SWELLING = 7.2e-6;

/** The least and the most that something may be. */
export type Range = readonly [least: number, most: number];

/**
 * Difference in length between a sheet and the wall behind it over a change of temperature, mm.
 * @param length mm
 * @param expansion coefficient of the sheet, 1/K
 */
export const movement = (length: number, expansion: number, swing: number): number =>
  Math.abs(expansion - GYPSUM_EXPANSION) * length * swing;

/** The same over a change of relative humidity, % RH; the sheet's growth per % RH. */
export const moistureMovement = (length: number, swelling: number, humidity: number): number =>
  Math.abs(swelling - GYPSUM_SWELLING) * length * humidity;

/**
 * How far a joint beside a sheet of the given length has to give, mm: temperature and moisture at once, each at the end of
 * its range that moves least and most. All of it is taken at one end, as where the other end is held.
 */
export function movementBeside(length: number, supplied: Supplies['movement']): Range {
  const { expansion, expansionMost = expansion, swing, swelling, swellingMost = swelling, humidity } = supplied;
  const [warm, warmest] = overRange([expansion * 1e-6, expansionMost * 1e-6], GYPSUM_EXPANSION, (coefficient) =>
    movement(length, coefficient, swing),
  );
  const [damp, dampest] = overRange([swelling * 1e-6, swellingMost * 1e-6], GYPSUM_SWELLING, (coefficient) =>
    moistureMovement(length, coefficient, humidity),
  );
  return [warm + damp, warmest + dampest];
}

/** Least and most over a range of coefficients: none moves where the range holds the wall's own. */
function overRange(range: Range, wall: number, moves: (coefficient: number) => number): Range {
  const [least, most] = [Math.min(...range), Math.max(...range)];
  const ends = [moves(least), moves(most)];
  return [least <= wall && wall <= most ? 0 : Math.min(...ends), Math.max(...ends)];
}

/**
 * Width that a joint needs to take a movement, mm: movement over the sealant's movement capability, plus tolerance
 * (ASTM C1472; formula from memory).
 * @param capability share of its width that the sealant can move, 0.25 for class 25
 */
export const widthForMovement = (moves: number, capability: number, tolerance = 0): number =>
  moves / capability + tolerance;

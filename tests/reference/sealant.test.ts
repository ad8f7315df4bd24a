import { describe, expect, it } from 'vitest';
import { CARTRIDGES, jointVolume, ML_PER_FLUID_OUNCE } from '../../src/core/materials';

const INCH = 25.4;
const FOOT = 12 * INCH;

/** One US gallon is 231 in³ (NIST Handbook 44, appendix C), so a fluid ounce is 231/128 in³ = 29.5735295625 mL. */
describe('fluid ounces', () => {
  it('are exact', () => expect(ML_PER_FLUID_OUNCE).toBeCloseTo(29.5735295625, 12));
  it('make cartridges of 298.7 and 828.1 mL', () => {
    expect(CARTRIDGES['10.1 oz']).toBeCloseTo(298.7, 1);
    expect(CARTRIDGES['28 oz']).toBeCloseTo(828.1, 1);
  });
});

/**
 * Feet of joint from a 10.1 oz cartridge by width × depth in inches: oz · 231/128 / (w d 12), recomputed from the
 * definition of the ounce. Fillet: right triangle of the given leg.
 */
describe('feet of joint from a 10.1 oz cartridge', () => {
  const cartridge = CARTRIDGES['10.1 oz'] * 1000;
  const feet = (width: number, thickness: number, fillet: number): number =>
    cartridge /
    jointVolume(
      [
        [0, width],
        [FOOT, width],
      ],
      thickness,
      fillet,
    );

  it.each([
    [1 / 8, 1 / 8, 97.21],
    [1 / 4, 1 / 4, 24.3],
    [3 / 8, 1 / 4, 16.2],
    [1 / 2, 1 / 4, 12.15],
    [3 / 4, 3 / 8, 5.4],
  ])('%f by %f in gives %f ft', (width, depth, expected) => {
    expect(feet(width * INCH, depth * INCH, 0)).toBeCloseTo(expected, 2);
  });

  it.each([
    [1 / 4, 48.61],
    [3 / 8, 21.6],
    [1 / 2, 12.15],
  ])('a fillet of %f in gives %f ft', (leg, expected) => {
    expect(feet(0, 6, leg * INCH)).toBeCloseTo(expected, 2);
  });
});

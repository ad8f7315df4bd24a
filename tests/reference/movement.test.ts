import { describe, expect, it } from 'vitest';
import { movement, widthForMovement } from '../../src/core/materials';

const INCH = 25.4;

/**
 * Sizing of a sealed joint, W = ΔL / S + tolerance: ASTM C1472 (title and scope read at standards.iteh.ai; the formula
 * from memory). Worked for 96 in, α = 4e-5/°F and 40 °F: ΔL = 0.1536 in, so 0.614 in at S = 0.25 and 0.307 in at 0.5.
 */
describe('width of a joint for a movement', () => {
  const moves = 96 * 4e-5 * 40 * INCH;
  it.each([
    [0.25, 0.614],
    [0.5, 0.307],
  ])('at a movement capability of %f is %f in', (capability, inches) => {
    expect(widthForMovement(moves, capability) / INCH).toBeCloseTo(inches, 3);
  });
  it('adds the tolerance', () => expect(widthForMovement(2, 0.5, 1.5)).toBe(5.5));
});

/**
 * Coefficients of linear thermal expansion, 1e-6/K, as ranges: acrylic 68 to 75 (engineering table, second hand), PVC 40
 * to 80 and glass-reinforced polyester 20 to 35 (northernarchitecture.us, thermal and moisture movement), gypsum board 9e-6
 * per °F = 16e-6/K (GA-235; from memory).
 */
describe('movement of a sheet against gypsum board', () => {
  const FAHRENHEIT = 5 / 9;
  const gypsum = 9e-6;
  it.each([
    ['acrylic', 68, 75],
    ['PVC', 40, 80],
    ['glass-reinforced polyester', 20, 35],
  ])('%s: what length times coefficients and temperature in °F gives', (_material, low, high) => {
    for (const expansion of [low, high]) {
      const inches = 60 * (expansion * 1e-6 * FAHRENHEIT - gypsum) * 36;
      // 36 °F are 20 K; the figure for gypsum is rounded by 1 %.
      expect(movement(60 * INCH, expansion * 1e-6, 20)).toBeCloseTo(inches * INCH, 1);
    }
  });
  it('is none where both grow alike', () => expect(movement(2000, 16e-6, 30)).toBeCloseTo(0, 9));
});

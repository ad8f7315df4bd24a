import { describe, expect, it } from 'vitest';
import { moistureMovement, movement, movementBeside, moving, widthForMovement } from '../../src/core/materials';

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

/** Gypsum board: 7.2e-6 per % RH (GA-235; from memory). */
describe('movement with moisture', () => {
  it('is the difference to the board behind', () => {
    expect(moistureMovement(1000, 0, 50)).toBeCloseTo(7.2e-6 * 1000 * 50, 12);
    expect(moistureMovement(1000, 7.2e-6, 50)).toBeCloseTo(0, 12);
  });
});

describe('movement beside a sheet whose coefficients are known as ranges', () => {
  // acrylic 68 to 75, 20 K, no change of moisture
  it('moves least and most at the ends of the range', () => {
    const acrylic = { expansion: 68, expansionMost: 75, swing: 20, swelling: 0, humidity: 0, capability: 0.25 };
    const [least, most] = movementBeside(1500, acrylic);
    expect(least).toBeCloseTo((68 - 16) * 1e-6 * 1500 * 20, 9);
    expect(most).toBeCloseTo((75 - 16) * 1e-6 * 1500 * 20, 9);
  });
  it('may not move at all where the range holds the board’s own figure, and moves most at the further end', () => {
    const supplied = { expansion: 6.1, expansionMost: 50, swing: 20, swelling: 0, humidity: 0, capability: 0.25 };
    expect(movementBeside(1000, supplied)).toEqual([0, expect.closeTo(34e-6 * 1000 * 20, 9)]);
  });
  it('adds temperature and moisture, whichever way round the ranges are put in', () => {
    const supplied = {
      expansion: 35,
      expansionMost: 20,
      swing: 10,
      swelling: 20,
      swellingMost: 10,
      humidity: 30,
      capability: 0.25,
    };
    const [least, most] = movementBeside(2000, supplied);
    expect(least).toBeCloseTo(2000 * (4e-6 * 10 + 2.8e-6 * 30), 9);
    expect(most).toBeCloseTo(2000 * (19e-6 * 10 + 12.8e-6 * 30), 9);
  });
  /** The example above as a joint: 0.614 in wide it is used to the full at class 25, to the half at class 50. */
  it.each([
    [0.25, 1],
    [0.5, 0.5],
  ])('at a capability of %f uses %f of the class', (capability, used) => {
    const fahrenheit = 9 / 5;
    const length = 96 * INCH;
    // so that the sheet alone moves by α = 4e-5 per °F over 40 °F
    const expansion = 40 * fahrenheit + 16;
    const width = (0.1536 * INCH) / 0.25;
    const joint = {
      id: 'j',
      label: 'j',
      filler: 'sealant' as const,
      length: 1000,
      widths: [
        [0, width + 1],
        [1000, width],
      ] as [number, number][],
      wall: 'back' as const,
      path: [],
    };
    const { moves, wants } = moving(joint, length, {
      expansion,
      swing: 40 / fahrenheit,
      swelling: 0,
      humidity: 0,
      capability,
    });
    expect(moves!.most / INCH).toBeCloseTo(0.1536, 6);
    expect(moves!.used).toBeCloseTo(used, 6);
    expect(wants).toBeCloseTo(width * used, 6);
  });
});

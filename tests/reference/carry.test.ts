import { describe, expect, it } from 'vitest';
import { completeElliptic, elastica, longestRoundCorner, throughOpening } from '../../src/core/carry';

/**
 * Post-buckling of a strut built in at its foot, length l, by the angle α at its free end: P/P_cr, x_a/l, y_a/l
 * (Timoshenko and Gere, Theory of Elastic Stability, 2nd ed. 1961, table 2-2; from memory). A hinged strip twice as long
 * is two of them: chord/L = x_a/l, sagitta/L = y_a/2l.
 */
const ELASTICA: [degrees: number, load: number, x: number, y: number][] = [
  [20, 1.015, 0.97, 0.22],
  [40, 1.063, 0.881, 0.422],
  [60, 1.152, 0.741, 0.593],
  [80, 1.293, 0.56, 0.719],
  [100, 1.518, 0.349, 0.792],
  [120, 1.884, 0.123, 0.803],
];

describe('elastica', () => {
  it.each(ELASTICA)('whose ends lean by %f° holds as the table says', (degrees, load, x, y) => {
    const k = Math.sin((degrees * Math.PI) / 360);
    const { first, second } = completeElliptic(k);
    const length = 1000;
    const bent = elastica(length, length * ((2 * second) / first - 1));
    // the table's last digit, which it rounds either way
    expect(Math.abs((2 * second) / first - 1 - x)).toBeLessThan(0.0011);
    expect(Math.abs((2 * bent.sagitta) / length - y)).toBeLessThan(0.0011);
    expect(bent.force / (Math.PI / length) ** 2).toBeCloseTo(load, 2);
  });

  it('is, a little bent, a half sine wave: shortening π² s²/4L, curvature π² s/L²', () => {
    // L 2000, s 10: 0.12337 mm (reference list E)
    const { sagitta, curvature, force } = elastica(2000, 2000 - 0.12337);
    expect(sagitta).toBeCloseTo(10, 3);
    expect(curvature).toBeCloseTo((Math.PI ** 2 * 10) / 2000 ** 2, 8);
    expect(force).toBeCloseTo((Math.PI / 2000) ** 2, 9);
  });

  it('lies near the circle and the parabola of its sagitta: shortening 8 s²/3L within 8 %', () => {
    for (const shortening of [0.5, 2, 8, 20]) {
      const { sagitta } = elastica(1500, 1500 - shortening);
      const circle = (8 * sagitta ** 2) / (3 * 1500);
      expect(circle / shortening).toBeGreaterThan(1);
      expect(circle / shortening).toBeLessThan(1.09);
    }
  });
});

/** Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1, m = ½ (from memory). */
it('complete elliptic integrals of modulus 1/√2', () => {
  const { first, second } = completeElliptic(Math.SQRT1_2);
  expect(first).toBeCloseTo(1.8540746773, 10);
  expect(second).toBeCloseTo(1.350643881, 10);
});

describe('board round the corner of two corridors', () => {
  it.each([
    [900, 900],
    [800, 1200],
    [1000, 2500],
  ])('a thin one between %f and %f mm: (a^⅔ + b^⅔)^(3/2), the ladder of the calculus books', (a, b) => {
    expect(longestRoundCorner(a, b, Math.PI / 2, 0)).toBeCloseTo((a ** (2 / 3) + b ** (2 / 3)) ** 1.5, 6);
  });
  it('a thick one between equal corridors, at 45°: 2√2 a − 2t', () => {
    expect(longestRoundCorner(900, 900, Math.PI / 2, 40)).toBeCloseTo(2 * Math.SQRT2 * 900 - 80, 6);
  });
  it.each([45, 60, 120, 150])('round a turn of %f° between equal corridors: 2a/sin(τ/2) − 2t cot(τ/2)', (degrees) => {
    const half = (degrees * Math.PI) / 360;
    expect(longestRoundCorner(1000, 1000, 2 * half, 20)).toBeCloseTo(2000 / Math.sin(half) - 40 / Math.tan(half), 6);
  });
});

/**
 * A p × q rectangle, p > a, lies in an a × b one, a ≥ b, just where b ≥ (2pqa + (p² − q²)√(p² + q² − a²))/(p² + q²)
 * (Carver, American Mathematical Monthly 64, 1957, 114–116; from memory).
 */
describe('sheet leaned over in a doorway', () => {
  const leastWidth = (p: number, q: number, a: number): number =>
    (2 * p * q * a + (p * p - q * q) * Math.sqrt(p * p + q * q - a * a)) / (p * p + q * q);
  it.each([
    [2100, 6, 2000],
    [2100, 40, 2000],
    [2438, 12, 2030],
  ])('of %f × %f mm passes a door %f high from that width on', (p, q, a) => {
    const wide = leastWidth(p, q, a);
    expect(throughOpening(p, q, wide, a).clearance).toBeCloseTo(0, 3);
    expect(throughOpening(p, q, wide + 1, a).clearance).toBeGreaterThan(0);
    expect(throughOpening(p, q, wide - 1, a).clearance).toBeLessThan(0);
  });
  it('stands upright where it may', () =>
    expect(throughOpening(1900, 6, 800, 2000)).toEqual({ clearance: 50, lean: 0 }));
});

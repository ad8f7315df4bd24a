import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { standardDeviation } from '../../../../src/core/adjust';
import { alcoveModel } from '../../../../src/core/alcove';
import { constant } from '../../../../src/core/dual';
import { gridOver } from '../../../../src/core/flatten';
import { bedAt, bedWith, seatPanels } from '../../../../src/core/seat';
import { randomFrom } from '../../../simulate';
import { jobOf } from '../panel/fitting';
import { alcoveOf } from '../skewedAlcove';

const STATED = {
  bedding: { edges: 'seated', stiffness: 'stated', modulusAcross: 9000, modulusUp: 9000 },
  fit: { thickness: 12 },
} as const;
const WALL = { 'right.bowUp': -6e-6, 'right.bowAcross': 4e-6, 'right.plumb': 0.004 };

describe('a bent sheet as a surface', () => {
  const alcove = alcoveOf(WALL);
  const { seats } = seatPanels(alcove, jobOf(STATED));
  const { surface } = seats.right;

  it('has the slopes and curvatures that its values have', () => {
    const h = 0.01;
    for (const [u, v] of [
      [200, 100],
      [500, -300],
    ] as const) {
      const [du, dv] = surface.gradient(u, v);
      expect(du).toBeCloseTo((surface.value(u + h, v) - surface.value(u - h, v)) / (2 * h), 8);
      expect(dv).toBeCloseTo((surface.value(u, v + h) - surface.value(u, v - h)) / (2 * h), 8);
      expect(surface.at(constant(u), constant(v)).value).toBe(surface.value(u, v));
    }
  });

  it('goes on straight beyond the sheet', () => {
    const [low, high] = seats.right.region.u;
    for (const [edge, out] of [
      [low, -1],
      [high, 1],
    ] as const) {
      const slope = surface.gradient(edge, 0)[0];
      expect(surface.value(edge + 50 * out, 0)).toBeCloseTo(surface.value(edge, 0) + 50 * out * slope, 9);
    }
  });

  it('moves as its wall does where that moves as a whole', () => {
    const place = [constant(380), constant(120)] as const;
    const [sheet, wall] = [surface.at(...place).gradient!, alcove.right.at(...place).gradient!];
    for (const name of ['right.position', 'right.plumb', 'right.square']) {
      const k = indexOf(name);
      expect(Math.abs(wall[k]!)).toBeGreaterThan(0.9);
      expect(sheet[k]! / wall[k]!).toBeCloseTo(1, 5);
    }
  });

  it('stands off the wall by a bed whose ± is that of many sheets pressed on walls as uncertain', () => {
    const sd = 3e-7;
    const job = jobOf(STATED);
    const bedHere = bedAt(alcove, seatPanels(alcove, job).sits, job, 'right');
    const place = gridOver(seats.right.region, 24).sort((a, b) => bedHere(b[0], b[1]) - bedHere(a[0], a[1]))[0]!;
    expect(bedHere(...place)).toBeGreaterThan(2.2);
    const linear = standardDeviation(
      bedWith(alcove, seatPanels(alcove, job).sits, job, 'right')(...place),
      covarianceOfBows(sd),
    );
    const random = randomFrom(4);
    const draws = Array.from({ length: 60 }, () => {
      const [a, b] = [random.normal(0, 1, 4), random.normal(0, 1, 4)];
      const drawn = alcoveOf({
        ...WALL,
        'right.bowUp': WALL['right.bowUp'] + sd * a,
        'right.bowAcross': WALL['right.bowAcross'] + sd * b,
      });
      return bedWith(drawn, seatPanels(drawn, job).sits, job, 'right')(...place).value;
    });
    const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
    const spread = Math.sqrt(draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws.length - 1));
    expect(linear / spread).toBeGreaterThan(0.7);
    expect(linear / spread).toBeLessThan(1.4);
  });
});

const { parameters } = alcoveModel(jobOf());
const indexOf = (name: string): number => parameters.findIndex((parameter) => parameter.name === name);

/** The two bows of the right wall known to `sd`, everything else exactly. */
function covarianceOfBows(sd: number): Matrix {
  const covariance = Matrix.zeros(parameters.length, parameters.length);
  for (const name of ['right.bowUp', 'right.bowAcross']) covariance.set(indexOf(name), indexOf(name), sd * sd);
  return covariance;
}

import { describe, expect, it } from 'vitest';
import { smoothingOf } from '../../../src/core/scanned/smoothing';
import { basisSurface, splineBasis } from '../../../src/core/surface';
import reference from './splines_scipy.json';

// Reference values by SciPy and NumPy, made by make_splines.py beside this file.

describe('spline surfaces', () => {
  it('have the values, slopes and curvatures that SciPy gives, inside their stretches and outside', () => {
    for (const { across, up, coefficients, a, b, values } of reference.surfaces) {
      const basis = splineBasis(across, up);
      expect(basis.count).toBe(coefficients.length);
      const surface = basisSurface(basis, Float64Array.from(coefficients), 0);
      a.forEach((at, i) => {
        const height = b[i]!;
        const [slopeA, slopeB] = surface.gradient(at, height);
        const [aa, ab, bb] = surface.curvature(at, height);
        expect(surface.value(at, height)).toBeCloseTo(values['00'][i]!, 11);
        expect(slopeA).toBeCloseTo(values['10'][i]!, 13);
        expect(slopeB).toBeCloseTo(values['01'][i]!, 13);
        expect(aa).toBeCloseTo(values['20'][i]!, 15);
        expect(ab).toBeCloseTo(values['11'][i]!, 15);
        expect(bb).toBeCloseTo(values['02'][i]!, 15);
      });
    }
  });
});

describe('smoothing chosen by the cells', () => {
  /** A spline must make the cells a thousand times likelier: twice the logarithm of that. */
  const CALL = 2 * Math.log(1000);

  it('is the likeliest of all that are tried, by restricted likelihoods over the dense covariance matrix', () => {
    const chosen = reference.smoothing.map(({ at, height, cells, plain, tried }) => {
      const { spline, factor } = smoothingOf(
        {
          a: Float64Array.from(cells.a),
          b: Float64Array.from(cells.b),
          value: Float64Array.from(cells.value),
          sd: Float64Array.from(cells.sd),
        },
        'left',
        at as [number, number],
        height as [number, number],
      );
      const likeliest = tried.reduce((best, each) => (each.gain > best.gain ? each : best));
      const expected = likeliest.gain > CALL ? likeliest : null;
      expect(spline).toEqual(expected && { interval: expected.interval, sd: expected.sd });
      expect(factor / (expected ?? plain).factor).toBeCloseTo(1, 3);
      return spline;
    });
    // Walls with a hump that shows and walls without are both among them.
    expect(chosen.filter((each) => each === null).length).toBeGreaterThanOrEqual(2);
    expect(new Set(chosen.map((each) => each?.interval)).size).toBeGreaterThanOrEqual(3);
  });
});

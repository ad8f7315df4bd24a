import { describe, expect, it } from 'vitest';
import { heightFieldMetric, planarMetric, strainBetween } from '../../../../src/core/flatten/strain';

describe('strainBetween', () => {
  const still = planarMetric(1, 0, 0, 1);

  it('is none under a turn', () => {
    expect(strainBetween(still, planarMetric(Math.cos(0.4), Math.sin(0.4), -Math.sin(0.4), Math.cos(0.4)))).toBeCloseTo(
      0,
      15,
    );
  });

  it('is the stretch along the direction stretched most, whichever that is', () => {
    const stretch = 1.001;
    for (const angle of [0, 0.3, 1.1]) {
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      // stretch along (c, s): I + (stretch − 1) n nᵀ
      const by = stretch - 1;
      const metric = planarMetric(1 + by * c * c, by * c * s, by * c * s, 1 + by * s * s);
      expect(strainBetween(still, metric)).toBeCloseTo((stretch ** 2 - 1) / 2, 12);
      expect(strainBetween(metric, still)).toBeCloseTo((stretch ** 2 - 1) / 2, 12);
    }
  });

  it('is half the angle of a shear', () => {
    expect(strainBetween(still, planarMetric(1, 0, 0.002, Math.sqrt(1 - 0.002 ** 2)))).toBeCloseTo(0.001, 12);
  });
});

describe('heightFieldMetric', () => {
  it('is that of the surface in space', () => {
    const [hu, hv] = [0.3, -0.2];
    const [along, up] = [
      [1, 0, hu],
      [0, 1, hv],
    ] as const;
    const product = (a: readonly number[], b: readonly number[]) => a.reduce((sum, each, i) => sum + each * b[i]!, 0);
    const { E, F, G } = heightFieldMetric([hu, hv]);
    expect([E, F, G]).toEqual([
      expect.closeTo(product(along, along), 14),
      expect.closeTo(product(along, up), 14),
      expect.closeTo(product(up, up), 14),
    ]);
  });
});

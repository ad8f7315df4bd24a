import { describe, expect, it } from 'vitest';
import { bedAt } from '../../../../src/core/panel';
import { alcoveOf } from '../skewedAlcove';
import { fitted, jobOf } from './fitting';

describe('bedAt', () => {
  const hollow = alcoveOf({ 'right.bowUp': -6e-6 }); // x grows less to the middle: the right wall is a hump there
  const bowed = alcoveOf({ 'right.bowUp': 6e-6 });

  it("is the job's bed behind a sheet that follows the wall", () => {
    const { panel } = fitted(bowed, 'right');
    expect(bedAt(bowed, jobOf({ fit: { flexible: true } }), panel)(300, 100)).toBe(2);
  });

  it('grows by the hollow behind a rigid sheet', () => {
    for (const alcove of [hollow, bowed]) {
      const { panel } = fitted(alcove, 'right');
      const bed = bedAt(alcove, jobOf(), panel);
      const beds = [-737, -300, 121.5, 500, 980].map((v) => bed(300, v));
      expect(Math.min(...beds)).toBeCloseTo(2, 2);
      expect(Math.max(...beds)).toBeCloseTo(panel.bedMax, 1);
      expect(panel.bedMax - 2).toBeGreaterThan(4);
    }
  });
});

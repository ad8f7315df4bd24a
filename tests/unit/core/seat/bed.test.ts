import { describe, expect, it } from 'vitest';
import { bedAt, seatPanels } from '../../../../src/core/seat';
import { fitted, jobOf } from '../panel/fitting';
import { alcoveOf } from '../skewedAlcove';

describe('bedAt', () => {
  const hollow = alcoveOf({ 'right.bowUp': -6e-6 }); // x grows less to the middle: the right wall is a hump there
  const bowed = alcoveOf({ 'right.bowUp': 6e-6 });

  it("is the job's bed behind a sheet that follows the wall", () => {
    const job = jobOf({ fit: { flexible: true } });
    expect(bedAt(bowed, seatPanels(bowed, job).sits, job, 'right')(300, 100)).toBe(2);
  });

  it('grows by the hollow behind a rigid sheet', () => {
    for (const alcove of [hollow, bowed]) {
      const { panel } = fitted(alcove, 'right');
      const job = jobOf();
      const bed = bedAt(alcove, seatPanels(alcove, job).sits, job, 'right');
      const beds = [-737, -300, 121.5, 500, 980].map((v) => bed(300, v));
      expect(Math.min(...beds)).toBeCloseTo(2, 2);
      expect(Math.max(...beds)).toBeCloseTo(panel.bedMax, 1);
      expect(panel.bedMax - 2).toBeGreaterThan(4);
    }
  });
});

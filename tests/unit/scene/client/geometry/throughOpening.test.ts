import { describe, expect, it } from 'vitest';
import { throughOpening } from '../../../../../src/scene/client/geometry';

const opening = { left: -750, right: 750, front: 800 };

describe('throughOpening', () => {
  it('is true from straight in front and from within', () => {
    expect(throughOpening(opening, [-740, 0, 100], [0, 0, 3000])).toBe(true);
    expect(throughOpening(opening, [-740, 0, 100], [700, 0, 400])).toBe(true);
  });

  it('is false where the near front edge stands between', () => {
    // From (-1500, 3000) to (-700, 0), the line passes z = 800 at x = -700 - 800 × 800 / 3000 = -913.
    expect(throughOpening(opening, [-700, 0, 0], [-1500, 0, 3000])).toBe(false);
    // To (-500, 0) it passes at -500 - 1000 × 800 / 3000 = -767, and to (-450, 0) at -730.
    expect(throughOpening(opening, [-500, 0, 0], [-1500, 0, 3000])).toBe(false);
    expect(throughOpening(opening, [-450, 0, 0], [-1500, 0, 3000])).toBe(true);
    expect(throughOpening(opening, [700, 0, 0], [-1500, 0, 3000])).toBe(true);
  });
});

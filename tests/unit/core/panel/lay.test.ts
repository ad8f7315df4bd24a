import { describe, expect, it } from 'vitest';
import type { EdgeName, Point } from '../../../../src/core/panel';
import { laySheet } from '../../../../src/core/panel/lay';

const outline: Point[] = [
  [-740, -730],
  [751, -735],
  [760, 980],
  [-750, 980],
];
const sheet = { width: 1600, height: 2000 };
const lay = (kept: EdgeName[], names = { lower: 'left', upper: 'right' } as { lower: EdgeName; upper: EdgeName }) =>
  laySheet(outline, sheet, kept, names);

describe('laySheet', () => {
  it('centres the sheet where no factory edge is kept', () => {
    // outline 1510 × 1715 about (5, 122.5)
    expect(lay([])).toEqual({ left: 5 - 800, right: 5 + 800, bottom: 122.5 - 1000, top: 122.5 + 1000 });
  });

  it('lays it against a kept factory edge, centred along the other axis', () => {
    expect(lay(['top'])).toMatchObject({ top: 980, bottom: -1020, left: -795, right: 805 });
    expect(lay(['bottom', 'left'])).toEqual({ bottom: -735, top: 1265, left: -750, right: 850 });
    expect(lay(['right'])).toMatchObject({ left: -840, right: 760 });
  });

  it('knows the edges of a side panel', () => {
    const names = { lower: 'back', upper: 'front' } as const;
    expect(lay(['front'], names)).toMatchObject({ left: -840, right: 760 });
    expect(lay(['back'], names)).toMatchObject({ left: -750, right: 850 });
    expect(lay(['left'], names)).toMatchObject({ left: -795, right: 805 });
  });

  it('centres a sheet that is too small as well', () => {
    expect(laySheet(outline, { width: 1000, height: 500 }, ['top'], { lower: 'left', upper: 'right' })).toEqual({
      left: -495,
      right: 505,
      bottom: 480,
      top: 980,
    });
  });
});

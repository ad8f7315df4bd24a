import { describe, expect, it } from 'vitest';
import { outerLine } from '../../../../src/core/trim/outerLine';
import { alcoveOf } from '../skewedAlcove';
import { siteOf } from './trimmed';

const leaning = alcoveOf({ 'front.right.plumb': -0.01, 'front.left.plumb': 0.01 });

describe('outerLine', () => {
  it("is plumb at the outermost point of the panel's edge, wherever that is", () => {
    const site = siteOf(leaning, {}, 0.1);
    const right = outerLine(site, 'right', false);
    expect(right.at.value).toBeCloseTo(760 + 7.37, 9);
    expect(outerLine(site, 'left', false).at.value).toBeCloseTo(760 + 9.8, 9);
    expect(site.sd(right.at)).toBeCloseTo(0.1 * Math.hypot(1, 737), 6);
  });

  it('goes down to the floor with a leg', () => {
    const line = outerLine(siteOf(leaning), 'right', true);
    expect(line.low).toBe(-1237);
    expect(line.at.value).toBeCloseTo(760 + 12.37, 9);
  });

  it('stands past the edge by the overhang, and by what a lip needs', () => {
    expect(outerLine(siteOf(leaning, { trim: { overhang: 5 } }), 'left', false).at.value).toBeCloseTo(774.8, 9);
    expect(outerLine(siteOf(leaning, { trim: { lip: 5, overhang: 3 } }), 'left', false).at.value).toBeCloseTo(776.8, 9);
  });

  it('is where it is told to be, known without error', () => {
    const site = siteOf(leaning, { trim: { outerLine: { left: 765 } } }, 0.1);
    const line = outerLine(site, 'left', false);
    expect(line.at.value).toBe(765);
    expect(site.sd(line.at)).toBe(0);
    expect(line.pastWall).toBeCloseTo(765 - (760 - 7.37), 9);
  });

  it('is not past the wall when the panels are set back by the taper', () => {
    expect(outerLine(siteOf(leaning, { fit: { frontSetBack: 18 } }), 'left', false).pastWall).toBe(0);
  });
});

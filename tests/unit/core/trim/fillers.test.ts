import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/core/piece';
import { alcoveOf } from '../skewedAlcove';
import { pieceOf, rounded, trimmed } from './trimmed';

const box = alcoveOf({});

describe("fillers over the panels' tops", () => {
  it('lie on the wall behind what stands above the panels', () => {
    const { fillers } = trimmed(box);
    expect(fillers.map(({ id }) => id)).toEqual(['fillers.top', 'fillers.left.top', 'fillers.right.top']);
    const top = pieceOf(fillers, 'fillers.top');
    // from wall to wall less 1 mm at each end, 11 of the 12 mm high
    expect(top.size).toEqual({ along: expect.closeTo(1518, 9), across: expect.closeTo(11, 9) });
    expect(fold(top)(0, 0, 0)).toEqual([0, 981, 2]);
    // from the top piece's face, 2 + 6 + 6, less 1, to the outer line
    const xs = rounded(pieceOf(fillers, 'fillers.right.top').outline).map(([x]) => x);
    expect([Math.min(...(xs as number[])), Math.max(...(xs as number[]))]).toEqual([15, 760]);
    expect(fillers.every(({ stock, thickness }) => stock === 'sheet' && thickness === 6)).toBe(true);
  });

  it('are left out where the hollow is low, or where there is no such trim', () => {
    expect(trimmed(box, { trim: { rise: 6 } }).fillers).toEqual([]);
    expect(trimmed(box, { trim: { top: false, sideTops: false } }).fillers).toEqual([]);
    expect(trimmed(box, { trim: { sideTops: false } }).fillers.map(({ id }) => id)).toEqual(['fillers.top']);
  });

  it('start at the back filler where the top piece is mitred', () => {
    const { fillers } = trimmed(box, { trim: { joinery: 'mitre' } });
    expect(Math.min(...pieceOf(fillers, 'fillers.right.top').outline.map(([x]) => x))).toBeCloseTo(9, 9);
  });

  it('leave room for a lip', () => {
    const top = pieceOf(trimmed(box, { trim: { lip: 7, rise: 20 } }).fillers, 'fillers.top');
    expect(top.size.across).toBeCloseTo(20 - 6 - 1 - 1, 9);
  });
});

describe('fillers behind a vertical', () => {
  const leaning = alcoveOf({ 'front.right.plumb': 0.01 });

  it("fill the wedge between the panel's edge and the plumb line", () => {
    const wedge = pieceOf(trimmed(leaning).fillers, 'fillers.right.vertical');
    // the edge leans out by 17.17 mm from rim to top; the wedge is 1 mm off it and ends 2 mm wide
    expect(wedge.size.across).toBeCloseTo(0.01 * (980 + 737) - 1, 1);
    expect(wedge.outline).toHaveLength(4);
    const place = fold(wedge);
    const beside = wedge.edges[0]!.marks.map(({ at }) => place(at[0], at[1], 0));
    for (const [, y, z] of beside) expect(z).toBeCloseTo(760 + 0.01 * y + 1, 3);
    expect(Math.max(...wedge.outline.map(([, y]) => y))).toBeLessThan(954);
  });

  it('are left out where the wedge is thin', () => {
    const little = alcoveOf({ 'front.right.plumb': 0.003 });
    expect(trimmed(little).fillers.map(({ id }) => id)).not.toContain('fillers.right.vertical');
  });

  it('go on beside the leg, down to the floor', () => {
    const { fillers, legs } = trimmed(leaning, { rim: { width: 700 } });
    expect(legs.map(({ wall }) => wall)).toContain('right');
    const wedge = pieceOf(fillers, 'fillers.right.vertical');
    expect(Math.min(...wedge.outline.map(([, y]) => y))).toBeCloseTo(-1237, 6);
  });

  it('stand in for a leg beside the tub where the vertical goes down there without one', () => {
    const { fillers, legs } = trimmed(leaning, { rim: { width: 752 } });
    expect(legs.map(({ wall }) => wall)).not.toContain('right');
    const foot = pieceOf(fillers, 'fillers.right.foot');
    // from the apron's joint, 755, to the outer line, 769.8
    expect(foot.size.across).toBeCloseTo(760 + 9.8 - 755, 6);
    expect(Math.min(...foot.outline.map(([, y]) => y))).toBeCloseTo(-1237, 6);
    expect(fillers.map(({ id }) => id)).not.toContain('fillers.left.foot');
  });
});

import { describe, expect, it } from 'vitest';
import { polygonArea } from '../../../../src/core/panel';
import { fold } from '../../../../src/core/piece';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { pieceOf, rounded, trimmed } from './trimmed';

const box = alcoveOf({});
const top = (...given: Parameters<typeof trimmed>) => pieceOf(trimmed(...given).trim, 'trim.top');

describe('the top piece, butted', () => {
  it('runs from side wall to side wall, notched over the side panels', () => {
    const piece = top(box);
    // lower edge 980 + 12 − 38; notch 1 mm over the panels' top, 1 mm off their faces at 760 − 2 − 6
    expect(rounded(piece.outline)).toEqual([
      [751, 0],
      [751, 27],
      [759, 27],
      [759, 38],
      [-759, 38],
      [-759, 27],
      [-751, 27],
      [-751, 0],
    ]);
    expect(piece.notches).toEqual([
      { corner: 'lower left', along: expect.closeTo(8, 9), across: 27, sd: 0 },
      { corner: 'lower right', along: expect.closeTo(8, 9), across: 27, sd: 0 },
    ]);
    expect(piece.size).toEqual({ along: expect.closeTo(1518, 9), across: 38 });
    expect(piece.ends.map(({ joint, bevel }) => [joint, bevel.degrees])).toEqual([
      ['butt', 0],
      ['butt', 0],
    ]);
  });

  it("lies level on the back panel's face, its lower edge at one height", () => {
    for (let seed = 1; seed <= 6; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const piece = top(alcove);
      const place = fold(piece);
      for (const share of [0.05, 0.3, 0.6, 0.95]) {
        const x = piece.outline[7]![0] + share * (piece.outline[0]![0] - piece.outline[7]![0]);
        const [u, y, z] = place(x, 0, 0);
        expect(y).toBeCloseTo(954, 6);
        expect(z).toBeCloseTo(alcove.back.value(u, y) + 8, 1);
      }
    }
  });

  it('clears a leaning wall by the joint, and says at which angle its end is cut', () => {
    const piece = top(alcoveOf({ 'right.plumb': 0.02 }), {}, 0.001);
    const place = fold(piece);
    const [x, y] = place(...piece.outline[3]!, 6);
    expect(760 + 0.02 * y - x).toBeCloseTo(1, 6);
    const [left, right] = piece.ends;
    expect(right!.mitre.degrees).toBeCloseTo((Math.atan(0.02) * 180) / Math.PI, 6);
    expect(right!.mitre.sd).toBeGreaterThan(0);
    expect(left!.mitre.degrees).toBeCloseTo(0, 9);
  });

  it('has no notches where it stands hardly above the panels', () => {
    const piece = top(box, { trim: { rise: 2 } });
    expect(piece.notches).toEqual([]);
    expect(rounded(piece.outline)).toEqual([
      [751, 0],
      [751, 38],
      [-751, 38],
      [-751, 0],
    ]);
  });

  it.each([39, 60])('runs from wall to wall without notches where it stands wholly above the panels, %s mm', (rise) => {
    const piece = top(box, { trim: { rise } });
    expect(piece.notches).toEqual([]);
    expect(rounded(piece.outline)).toEqual([
      [759, 0],
      [759, 38],
      [-759, 38],
      [-759, 0],
    ]);
  });

  it.each([37, 38, 39])('has an angle at its ends where it stands %s mm above the panels, wide as it is', (rise) => {
    const [left, right] = top(alcoveOf({ 'right.plumb': 0.02 }), { trim: { rise } }, 0.001).ends;
    expect(left!.mitre.degrees).toBeCloseTo(0, 9);
    expect(right!.mitre.degrees).toBeCloseTo((Math.atan(0.02) * 180) / Math.PI, 6);
    expect(right!.mitre.sd).toBeGreaterThan(0);
  });

  it('reaches the walls with its lip too', () => {
    const piece = top(alcoveOf({ 'right.square': -0.05 }), { trim: { lip: 7, rise: 12 } });
    const [main, lip] = piece.bodies;
    expect(lip).toMatchObject({ from: -7, to: 0 });
    expect(rounded(lip!.face).map(([, y]) => y)).toEqual([32, 32, 38, 38]);
    // the wall closes in towards the room: the face at z = 14 is the tighter, for both bodies
    expect(lip!.face[1]![0]).toBeCloseTo(main!.face[3]![0], 9);
    expect(main!.face[3]![0]).toBeCloseTo(760 - 0.05 * 14 - 1, 6);
  });
});

describe('the top piece, mitred', () => {
  it('is longer at its back, by its thickness at each end in a square corner', () => {
    const piece = top(box, { trim: { joinery: 'mitre' } });
    // half a joint of 1 mm, measured square to the 45° cut, is 0.71 mm along the piece
    const [{ back, face }] = piece.bodies as [(typeof piece.bodies)[0]];
    expect(rounded(back)).toEqual([
      [751.29, 0],
      [751.29, 38],
      [-751.29, 38],
      [-751.29, 0],
    ]);
    expect(rounded(face)[0]).toEqual([745.29, 0]);
    expect(piece.notches).toEqual([]);
    expect(piece.ends.map(({ joint, bevel }) => [joint, bevel.degrees])).toEqual([
      ['mitre', expect.closeTo(45, 9)],
      ['mitre', expect.closeTo(45, 9)],
    ]);
    expect(polygonArea(face)).toBeLessThan(polygonArea(back));
  });

  it('is butted where there are no side tops to mitre with', () => {
    expect(top(box, { trim: { joinery: 'mitre', sideTops: false } }).ends[0]!.joint).toBe('butt');
  });
});

it('the derivatives reach the marks', () => {
  const piece = top(box, {}, 1);
  // position, slope and bow of the side wall, 1 sigma each in its own unit, at 8 to 14 mm out and 954 mm up
  expect(piece.edges[1]!.marks[0]!.sd).toBeGreaterThan(954);
  expect(piece.worst95).toBeCloseTo(
    1.959964 * Math.max(...piece.edges.flatMap(({ marks }) => marks.map(({ sd }) => sd))),
    6,
  );
});

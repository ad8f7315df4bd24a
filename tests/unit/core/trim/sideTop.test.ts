import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/core/piece';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { pieceOf, rounded, trimmed } from './trimmed';

const box = alcoveOf({});
const sideTop = (side: 'left' | 'right', ...given: Parameters<typeof trimmed>) =>
  pieceOf(trimmed(...given).trim, `trim.${side}.top`);

describe('a side top', () => {
  it("runs from the top piece's face to the outer line", () => {
    // back panel's face 8, trim 6, joint 1
    expect(rounded(sideTop('right', box).outline)).toEqual([
      [15, 0],
      [760, 0],
      [760, 38],
      [15, 38],
    ]);
    expect(rounded(sideTop('left', box).outline)).toEqual([
      [-15, 38],
      [-760, 38],
      [-760, 0],
      [-15, 0],
    ]);
  });

  it('starts at the back panel where there is no top piece', () => {
    expect(sideTop('right', box, { trim: { top: false } }).outline[0]![0]).toBeCloseTo(9, 9);
  });

  it.each(['left', 'right'] as const)("is bevelled to the corner's true angle where it butts, %s", (side) => {
    const out = side === 'left' ? -0.03 : 0.03;
    const piece = sideTop(side, alcoveOf({ [`${side}.square`]: out }), {}, 1e-4);
    const [back] = piece.ends;
    expect(back!.joint).toBe('butt');
    // the corner is wider than square by atan 0.03, so the face is the longer
    expect(back!.bevel.degrees).toBeCloseTo((-Math.atan(0.03) * 180) / Math.PI, 3);
    expect(back!.bevel.sd).toBeGreaterThan(0);
  });

  it.each(['left', 'right'] as const)('halves the corner where it mitres, %s', (side) => {
    const out = side === 'left' ? -0.03 : 0.03;
    const { trim } = trimmed(alcoveOf({ [`${side}.square`]: out }), { trim: { joinery: 'mitre' } });
    const half = 45 - ((Math.atan(0.03) / 2) * 180) / Math.PI;
    const back = pieceOf(trim, `trim.${side}.top`).ends[0]!;
    const topEnd = pieceOf(trim, 'trim.top').ends.find(({ name }) => name === `${side} end`)!;
    expect(back.bevel.degrees).toBeCloseTo(half, 2);
    expect(topEnd.bevel.degrees).toBeCloseTo(half, 2);
  });

  it('is mitred with the vertical at 45° where both are as wide', () => {
    const front = sideTop('right', box, { trim: { joinery: 'mitre' } }).ends[1]!;
    expect(front).toMatchObject({ joint: 'mitre', mitre: { degrees: expect.closeTo(45, 9) } });
    const narrow = sideTop('right', box, { trim: { joinery: 'mitre', verticalWidth: 19 } }).ends[1]!;
    expect(narrow.mitre.degrees).toBeCloseTo((Math.atan(0.5) * 180) / Math.PI, 9);
  });

  it("ends plumb at the outer line, on its panel's face, whatever the walls", () => {
    for (let seed = 1; seed <= 6; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const { trim } = trimmed(alcove);
      for (const side of ['left', 'right'] as const) {
        const piece = pieceOf(trim, `trim.${side}.top`);
        const place = fold(piece);
        const ends = piece.edges[1]!.marks.map(({ at }) => place(at[0], at[1], 0));
        expect(ends[0]![2]).toBeCloseTo(ends[1]![2], 2);
        for (const [x, y, z] of ends) {
          expect(Math.abs(x - alcove[side].value(z, y))).toBeCloseTo(8, 1);
          expect([954, 992].some((height) => Math.abs(height - y) < 0.02)).toBe(true);
        }
      }
    }
  });
});

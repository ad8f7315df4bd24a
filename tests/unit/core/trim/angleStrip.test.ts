import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/core/piece';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { pieceOf, rounded, trimmed } from './trimmed';

const box = alcoveOf({});
const corner = (side: 'left' | 'right', ...[alcove, choices = {}, sd]: Parameters<typeof trimmed>) =>
  pieceOf(
    trimmed(alcove, { ...choices, trim: { insideCorners: true, ...choices.trim } }, sd).trim,
    `trim.${side}.corner`,
  );

describe("an inside corner's angle strip", () => {
  it('has a flange on each panel, from the rim to the trim above', () => {
    const strip = corner('left', box);
    const [back, side] = strip.bodies;
    expect(rounded(back!.face)).toEqual([
      [0, -737],
      [19, -737],
      [19, 953],
      [0, 953],
    ]);
    expect(back).toMatchObject({ from: 0, to: 2 });
    expect(side).toMatchObject({ from: 2, to: 19 });
    expect(rounded(side!.face)).toEqual([
      [0, -737],
      [2, -737],
      [2, 953],
      [0, 953],
    ]);
    expect(Math.min(...corner('right', box).outline.map(([x]) => x))).toBeCloseTo(-19, 9);
    expect(fold(strip)(0, 0, 0)).toEqual([-752, 0, 8].map((value) => expect.closeTo(value, 9)));
  });

  it("goes to the panels' top where there is no trim", () => {
    const strip = corner('left', box, { trim: { top: false, sideTops: false } });
    expect(Math.max(...strip.outline.map(([, y]) => y))).toBeCloseTo(980, 9);
  });

  it("lies on both panels' faces whatever the corner's angle", () => {
    for (let seed = 1; seed <= 8; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      for (const side of ['left', 'right'] as const) {
        const strip = corner(side, alcove);
        const place = fold(strip);
        const inward = side === 'left' ? 1 : -1;
        for (const [x, y] of strip.bodies[0]!.back) {
          const [px, py, pz] = place(x, y, 0);
          expect(pz - alcove.back.value(px, py) - 8).toBeCloseTo(0, 1);
        }
        const flange = strip.bodies[1]!;
        for (const [x, y] of [flange.face[0]!, flange.face[3]!]) {
          const [px, py, pz] = place(x, y, flange.to);
          // one angle for the whole strip: two walls that twist by 20 mm/m² put it out by 0.65 mm over its width
          expect(Math.abs(inward * (px - alcove[side].value(pz, py)) - 8)).toBeLessThan(0.7);
        }
      }
    }
  });

  it('stands off the rim by the joint', () => {
    const alcove = alcoveOf({ 'rim.levelAlong': 0.008, 'rim.levelAcross': -0.006 });
    const strip = corner('right', alcove);
    const place = fold(strip);
    for (const { back, from } of strip.bodies) {
      for (const [x, y] of back.filter(([, height]) => height < 0)) {
        const [px, py, pz] = place(x, y, from);
        expect(py - alcove.rim.value(px, pz)).toBeCloseTo(3, 6);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { polygonArea } from '../../../../src/core/panel';
import { fold } from '../../../../src/core/piece';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { pieceOf, rounded, trimmed } from './trimmed';

const box = alcoveOf({});
const deep = alcoveOf({ 'front.left.position': 800, 'front.right.position': 800 });
const vertical = (side: 'left' | 'right', ...given: Parameters<typeof trimmed>) =>
  pieceOf(trimmed(...given).trim, `trim.${side}.vertical`);

describe('a side vertical', () => {
  it('stands on the rim where it does not reach past the apron', () => {
    const piece = vertical('right', box);
    expect(rounded(piece.outline)).toEqual([
      [-38, -737],
      [0, -737],
      [0, 953],
      [-38, 953],
    ]);
    expect(rounded(vertical('left', box).outline)).toEqual([
      [38, 953],
      [0, 953],
      [0, -737],
      [38, -737],
    ]);
  });

  it("goes round the rim's edge and down the apron to the floor where it straddles them", () => {
    const piece = vertical('right', deep, {
      rim: {
        width: 775,
        profile: [
          [0, 0],
          [20, -12],
        ],
      },
    });
    // inner edge 762, rim rolls from 755 to 775, apron's joint at 778, outer line 800, floor −1240 + 3
    expect(rounded(piece.outline)).toEqual(
      [
        [-38, -741.2],
        [-25, -749],
        [-22, -749],
        [-22, -749],
        [-22, -1237],
        [0, -1237],
        [0, 953],
        [-38, 953],
      ].filter((_, i) => i !== 3),
    );
    expect(piece.notes.map(({ text }) => text).join()).toMatch(/apron and floor/);
    expect(polygonArea(piece.outline)).toBeGreaterThan(0);
  });

  it('stands beside the tub with its whole width where the apron is farther in', () => {
    const piece = vertical('right', deep, { rim: { width: 700 } });
    expect(rounded(piece.outline)).toEqual([
      [-38, -1237],
      [0, -1237],
      [0, 953],
      [-38, 953],
    ]);
  });

  it('ends on the rim where it is told to', () => {
    const piece = vertical('right', deep, { rim: { width: 775 }, trim: { foot: 'rim' } });
    expect(Math.min(...piece.outline.map(([, y]) => y))).toBeCloseTo(-737, 9);
  });

  it('is scribed to an apron that stands back below', () => {
    const piece = vertical('right', deep, {
      rim: {
        width: 775,
        apron: [
          [0, -100],
          [-10, -300],
        ],
      },
    });
    const below = piece.outline.filter(([, y]) => y < -740 && y > -1200);
    expect(rounded(below)).toEqual([
      [-22, -840],
      [-32, -1040],
    ]);
    expect(piece.edges.find(({ name }) => name === 'foot')!.method).toBe('jigsaw');
  });

  it("stands plumb past the panel's edge where that stands out most", () => {
    for (let seed = 1; seed <= 6; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const { trim } = trimmed(alcove, { rim: { width: 900 } });
      for (const side of ['left', 'right'] as const) {
        const piece = pieceOf(trim, `trim.${side}.vertical`);
        const place = fold(piece);
        const [low, high] = [piece.outline.map(([, y]) => y)].map((ys) => [Math.min(...ys), Math.max(...ys)])[0]!;
        const [, , z0] = place(0, low!, 0);
        const [, , z1] = place(0, high!, 0);
        expect(z0).toBeCloseTo(z1, 6);
        const edges = [980, -740].map((height) => alcove.front[side].value(0, height));
        expect(z0).toBeGreaterThan(Math.max(...edges) - 1);
      }
    }
  });

  it('has a mitred head, and a lip along its outer edge', () => {
    const piece = vertical('right', box, { trim: { joinery: 'mitre', lip: 7 } });
    const [main, lip] = piece.bodies;
    // the outer line stands 6 + 1 past the panel's edge, the upper edge 12 over its top
    expect(
      rounded(main!.face)
        .slice(-2)
        .map(([, y]) => y),
    ).toEqual([991.29, 953.29]);
    expect(rounded(lip!.face).map(([x]) => x)).toEqual([-6, 0, 0, -6]);
    expect(lip).toMatchObject({ from: -7, to: 0 });
    expect(piece.ends[0]).toMatchObject({ name: 'head', joint: 'mitre', mitre: { degrees: expect.closeTo(45, 9) } });
  });

  it("ends at the panel's top where there is no side top", () => {
    expect(Math.max(...vertical('left', box, { trim: { sideTops: false } }).outline.map(([, y]) => y))).toBeCloseTo(
      980,
      9,
    );
  });

  it('warns where plumb it stands past the wall', () => {
    const leaning = alcoveOf({ 'front.right.plumb': 0.01 });
    const note = vertical('right', leaning).notes.find(({ text }) => /past the wall/.test(text))!;
    expect(note.howMuch).toBeCloseTo(0.01 * (980 + 737), 6);
    expect(vertical('left', leaning).notes.some(({ text }) => /past the wall/.test(text))).toBe(false);
    expect(vertical('right', leaning, { fit: { frontSetBack: 18 } }).notes.some(({ text }) => /past/.test(text))).toBe(
      false,
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { Alcove } from '../../../../src/core/alcove';
import type { JobInput } from '../../../../src/core/job-file';
import { fitLegs } from '../../../../src/core/leg';
import { polygonArea } from '../../../../src/core/panel';
import { fold } from '../../../../src/core/piece';
import { covarianceOf, jobOf } from '../panel/fitting';
import { alcoveOf } from '../skewedAlcove';

const legsOf = (alcove: Alcove, choices: Partial<JobInput> = {}, sd = 0) =>
  fitLegs(alcove, covarianceOf(sd), jobOf({ rim: { width: 750 }, levelAboveFloor: 1240, ...choices }));

/** Front edges of the walls 40 mm past the apron; the panels stop 5 mm short. */
const deep = alcoveOf({ 'front.left.position': 790, 'front.right.position': 790 });

describe('fitLegs', () => {
  it('makes a leg on each side from apron to front line and from floor to panel', () => {
    const { legs, problems } = legsOf(deep);
    expect(problems).toEqual([]);
    expect(legs.map(({ id }) => id)).toEqual(['legs.left', 'legs.right']);
    const [left, right] = legs;
    // 750 + 3 to 790 − 5; floor −1240 + 3 to rim −740 + 3 − 2
    expect(right!.size).toEqual({ along: expect.closeTo(498, 9), across: expect.closeTo(32, 9) });
    expect(right!.outline).toEqual(expect.arrayContaining([[expect.closeTo(-32, 9), expect.closeTo(-1237, 9)]]));
    expect(left!.outline).toEqual(expect.arrayContaining([[expect.closeTo(32, 9), expect.closeTo(-1237, 9)]]));
    for (const leg of legs) {
      expect(polygonArea(leg.outline)).toBeCloseTo(32 * 498, 6);
      expect(leg).toMatchObject({ thickness: 6, stock: 'sheet', axis: 'y' });
    }
  });

  it("stands on the wall below the panel, its front edge in line with the panel's", () => {
    const leaning = alcoveOf({
      'front.left.position': 790,
      'front.right.position': 790,
      'front.right.plumb': 0.012,
      'right.plumb': 0.02,
      'right.bowUp': 1e-5,
    });
    const leg = legsOf(leaning).legs.find(({ wall }) => wall === 'right')!;
    const place = fold(leg);
    const front = leg.edges.find(({ name }) => name === 'front')!;
    for (const { at } of front.marks) {
      const [x, y, z] = place(at[0], at[1], 0);
      expect(z).toBeCloseTo(790 + 0.012 * y - 5, 2);
      expect(x).toBeCloseTo(leaning.right.value(z, y) - 2, 2);
    }
  });

  it("follows the apron's contour with the fewest marks", () => {
    const apron: [number, number][] = [
      [0, -60],
      [-6, -160],
      [-12, -260],
      [-18.2, -360],
      [-18, -480],
    ];
    const { legs } = legsOf(deep, {
      rim: {
        width: 750,
        profile: [
          [0, 0],
          [20, -10],
        ],
        apron,
      },
    });
    const beside = legs[1]!.edges.find(({ name }) => name === 'beside the tub')!;
    expect(beside.method).toBe('jigsaw');
    // plumb to −800, even to −1100, and nearly plumb again: four marks, not seven
    expect(beside.marks).toHaveLength(4);
    expect(beside.marks.map(({ sd }) => sd)).toEqual([1, 1, 1, 1]);
    expect(Math.min(...legs[1]!.outline.map(([x]) => x))).toBeCloseTo(-(785 - 750 - 3 + 18.2), 6);
  });

  it('makes none where the panel stays behind the apron, or where none is wanted', () => {
    expect(legsOf(alcoveOf({ 'front.left.position': 756, 'front.right.position': 700 }))).toEqual({
      legs: [],
      problems: [],
    });
    expect(legsOf(deep, { legs: { make: false } })).toEqual({ legs: [], problems: [] });
  });

  it('tells a strip too narrow for a leg, unless trim covers it to the floor', () => {
    const shallow = alcoveOf({ 'front.left.position': 763, 'front.right.position': 700 });
    expect(legsOf(shallow)).toEqual({ legs: [], problems: [] });
    const { legs, problems } = legsOf(shallow, { trim: { verticals: false } });
    expect(legs).toEqual([]);
    expect(problems).toEqual([
      { where: 'pieces.legs.left', what: expect.stringMatching(/too narrow/), howMuch: expect.closeTo(5, 9) },
    ]);
    expect(legsOf(shallow, { trim: { foot: 'rim' } }).problems).toHaveLength(1);
  });

  it('says how sure each edge is', () => {
    const [leg] = legsOf(deep, {}, 0.5).legs;
    const sds = Object.fromEntries(leg!.edges.map(({ name, marks }) => [name, marks.map(({ sd }) => sd)]));
    expect(sds['beside the tub']).toEqual([1, 1, 1]);
    // position and slope of the front edge, 0.5 mm and 0.5 per mm
    expect(sds.front![0]).toBeCloseTo(0.5 * Math.hypot(1, 1237), 6);
    expect(sds.foot![0]).toBeGreaterThan(0.4);
    expect(leg!.worst95).toBeGreaterThan(1.959 * sds.front![0]!);
  });
});

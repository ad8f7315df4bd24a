import { describe, expect, it } from 'vitest';
import { LEAST_WEB, type PanelHole, type Point } from '../../../../src/core/panel';
import { holeProblems } from '../../../../src/core/panel/holeProblems';

const hole = (id: string, at: number, edgeDistance = 100, diameter = 40): PanelHole => ({
  id,
  kind: 'other',
  u: at,
  v: 0,
  sheet: [at, 0],
  diameter,
  sd: { u: 0, v: 0 },
  aboveRim: 0,
  from: { of: 'wall', distance: at },
  edgeDistance,
});
const OUTLINE: Point[] = [
  [-740, -700],
  [740, -700],
  [740, 980],
  [-740, 980],
];
const FIT = { bed: 2, thickness: 6, cornerJoint: 2 };
const of = (...holes: PanelHole[]) =>
  holeProblems('left', holes, OUTLINE, FIT).map(({ what, howMuch }) => [what, howMuch]);

describe('holeProblems', () => {
  it('has none with enough material all round', () => {
    expect(of(hole('a', 0, LEAST_WEB), hole('b', 40 + LEAST_WEB))).toEqual([]);
  });

  it('names a hole off the panel, through its edge, and near it', () => {
    expect(of(hole('a', 0, -45))).toEqual([['the hole lies off the panel; check where the fixture is', 5]]);
    expect(of(hole('a', 0, -40))).toEqual([['the hole lies off the panel; check where the fixture is', 0]]);
    expect(of(hole('a', 0, -39))).toEqual([
      ["the hole breaks through the panel's edge; check where the fixture is", 39],
    ]);
    expect(of(hole('a', 0, 11))).toEqual([["too little material is left between the hole and the panel's edge", 11]]);
  });

  it('names holes that overlap or nearly do, once a pair', () => {
    expect(of(hole('a', 0), hole('b', 30))).toEqual([['the hole overlaps the hole for b', 10]]);
    expect(of(hole('a', 0), hole('b', 45))).toEqual([
      ['too little material is left between the hole and the hole for b', 5],
    ]);
    expect(of(hole('a', 0), hole('b', 45), hole('c', 90))).toHaveLength(2);
    expect(of(hole('a', 0, 100, 20), hole('b', 45))).toEqual([]);
  });

  it('names holes that the side panel beside them covers, on the back panel alone', () => {
    // the side panel's face stands 2 + 6 - 2 mm in from the back panel's edge: at 734
    const onBack = (at: number) =>
      holeProblems('back', [hole('a', at)], OUTLINE, FIT).map(({ what, howMuch }) => [what, howMuch]);
    expect(onBack(734 - 20 - LEAST_WEB)).toEqual([]);
    expect(onBack(704)).toEqual([['too little is left between the hole and the seam at the right side panel', 10]]);
    expect(onBack(-724)).toEqual([['the hole reaches into the seam behind the left side panel', 10]]);
    expect(of(hole('a', 704))).toEqual([]);
  });

  it('says where', () => {
    expect(holeProblems('left', [hole('shower head', 0, -1)], OUTLINE, FIT)[0]!.where).toBe(
      'panels.left.holes.shower head',
    );
  });

  it("leaves lengths to be printed in the reader's unit", () => {
    const all = holeProblems(
      'back',
      [hole('a', 0, -90), hole('b', 10, -5), hole('c', 20, 3), hole('d', 65), hole('e', 710)],
      OUTLINE,
      FIT,
    );
    expect(all.length).toBeGreaterThan(5);
    for (const { what } of all) expect(what).not.toMatch(/\d|mm|in\b\./);
  });
});

import { describe, expect, it } from 'vitest';
import type { Alcove } from '../../../../src/core/alcove';
import type { JobInput } from '../../../../src/core/job-file';
import { fitPanel, polygonArea } from '../../../../src/core/panel';
import { fold } from '../../../../src/core/piece';
import { fitShelves } from '../../../../src/core/shelf';
import { covarianceOf, jobOf } from '../panel/fitting';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';

type ShelfInput = NonNullable<JobInput['shelves']>[number];

function shelved(alcove: Alcove, shelves: ShelfInput[], choices: Partial<JobInput> = {}, sd = 0) {
  const job = jobOf({ ...choices, shelves });
  const fit = (name: 'back' | 'left' | 'right') => fitPanel(alcove, covarianceOf(sd), job, name).panel;
  return fitShelves(alcove, covarianceOf(sd), job, { back: fit('back'), left: fit('left'), right: fit('right') });
}

const box = alcoveOf({});
const one = (alcove: Alcove, shelf: ShelfInput, choices: Partial<JobInput> = {}, sd = 0) =>
  shelved(alcove, [shelf], choices, sd).shelves[0]!;

describe('a shelf', () => {
  it("stands in the corner of the panels' faces at its height over the rim", () => {
    const shelf = one(box, { corner: 'left', aboveRim: 500, slope: 0, front: 'straight', gap: 2 });
    expect(shelf.height).toBeCloseTo(-240, 9);
    expect(fold(shelf)(0, 0, 12)).toEqual([-752, -240, 8].map((value) => expect.closeTo(value, 9)));
    expect(fold(shelf)(0, 0, 0)[1]).toBeCloseTo(-252, 9);
    // right-angled, 230 mm from the corner less the gap at it
    expect(polygonArea(shelf.outline)).toBeCloseTo((228 * 228) / 2, 6);
    expect(shelf.angle).toEqual({ degrees: expect.closeTo(90, 9), sd: 0 });
  });

  it('falls from the corner along the line that halves it', () => {
    const shelf = one(box, { corner: 'right', slope: 15.6, front: 'returned', returns: 100 });
    const place = fold(shelf);
    const [corner, ...others] = shelf.outline.map(([x, y]) => place(x, y, 12)).sort((a, b) => b[1] - a[1]);
    expect(Math.hypot(corner![0] - 752, corner![2] - 8)).toBeLessThan(3.2);
    for (const [x, y, z] of others) {
      const out = (752 - x + (z - 8)) / Math.SQRT2;
      expect(shelf.height - y).toBeCloseTo((15.6 / 1000) * out, 9);
    }
  });

  it.each(['left', 'right'] as const)("is cut to the corner's real angle, %s", (corner) => {
    const out = corner === 'left' ? -0.04 : 0.04;
    const shelf = one(alcoveOf({ [`${corner}.square`]: out }), { corner, slope: 0 }, {}, 0.001);
    expect(shelf.angle.degrees).toBeCloseTo(90 + (Math.atan(0.04) * 180) / Math.PI, 6);
    expect(shelf.angle.sd).toBeGreaterThan(0.05);
  });

  it('keeps its gap to both panels, more where it is bowed away', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const { shelves } = shelved(alcove, [{ corner: 'left' }, { corner: 'right' }]);
      for (const shelf of shelves) {
        for (const { min, max } of shelf.gaps) {
          expect(min).toBeGreaterThan(1.6);
          expect(max).toBeLessThan(4);
        }
      }
    }
    expect(one(box, { slope: 0 }).gaps).toEqual([
      { wall: 'back', min: expect.closeTo(2, 9), max: expect.closeTo(2, 9) },
      { wall: 'right', min: expect.closeTo(2, 9), max: expect.closeTo(2, 9) },
    ]);
  });

  it('has its outline on the plane of its top, ends at its lengths', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const shelf = one(alcove, { corner: 'left', back: 300, side: 180, front: 'straight' });
      const place = fold(shelf);
      const [inner, ends] = [place(0, 0, 12), shelf.edges[2]!.marks.map(({ at }) => place(at[0], at[1], 12))];
      expect(Math.abs(Math.hypot(ends[0]![0] - inner[0], ends[0]![2] - inner[2]) - 300)).toBeLessThan(0.6);
      expect(Math.abs(Math.hypot(ends[1]![0] - inner[0], ends[1]![2] - inner[2]) - 180)).toBeLessThan(0.6);
    }
  });

  it('has bracket lines along its underside on both panels', () => {
    const shelf = one(box, { corner: 'right', slope: 15.6, thickness: 20, back: 300, side: 200 }, {}, 0.01);
    const [back, side] = shelf.bracketLines;
    const under = 20 * Math.hypot(1, 0.0156);
    expect(back!.wall).toBe('back');
    expect(back!.from).toEqual([752, -240 - under].map((value) => expect.closeTo(value, 6)));
    expect(back!.to[0]).toBeCloseTo(452, 6);
    // along a wall the fall is that along the bisector times cos 45°
    expect(back!.slope).toBeCloseTo(-15.6 * Math.SQRT1_2, 6);
    expect(side!.wall).toBe('right');
    expect(side!.from[0]).toBeCloseTo(8, 6);
    expect(side!.to[0]).toBeCloseTo(208, 6);
    expect(side!.slope).toBeCloseTo(-15.6 * Math.SQRT1_2, 6);
    expect(back!.sd).toBeGreaterThan(0);
  });

  it('has the front it is asked for', () => {
    const area = (front: 'straight' | 'round' | 'returned', returns = 60) =>
      polygonArea(one(box, { slope: 0, front, returns, back: 302, side: 202 }).outline);
    expect(area('straight')).toBeCloseTo((300 * 200) / 2, 6);
    expect(area('round')).toBeCloseTo((Math.PI / 4) * 300 * 200, -2);
    expect(area('returned')).toBeCloseTo(300 * 200 - ((300 - 60) * (200 - 60)) / 2, 6);
  });

  it("is cut out round an inside corner's angle strip", () => {
    const trim = { insideCorners: true, angleStrip: { width: 19, thickness: 2 } };
    const whole = one(box, { slope: 0, front: 'straight' });
    const notched = one(box, { slope: 0, front: 'straight' }, { trim });
    expect(polygonArea(whole.outline) - polygonArea(notched.outline)).toBeCloseTo(2 * 19 + 2 * 17, 6);
  });

  it('is called by its id, or by its place in the list', () => {
    const { shelves } = shelved(box, [{ aboveRim: 300 }, { id: 'soap', aboveRim: 600 }]);
    expect(shelves.map(({ id, name }) => [id, name])).toEqual([
      ['shelves.1', 'shelf 1'],
      ['shelves.soap', 'shelf soap'],
    ]);
  });
});

describe('notes on the fall', () => {
  const notes = (slope: number) => one(box, { slope }).notes.map(({ text }) => text);

  it('has none from 1/8 to 1/4 in per ft', () => {
    for (const slope of [10.42, 15.6, 20.83]) expect(notes(slope)).toEqual([]);
  });

  it('says when water stands and when things slide', () => {
    expect(notes(10)[0]).toMatch(/less than 1\/8 in per ft/);
    expect(notes(21)[0]).toMatch(/more than 1\/4 in per ft/);
  });
});

describe('problems of shelves', () => {
  const whats = (shelves: ShelfInput[], choices: Partial<JobInput> = {}) =>
    shelved(box, shelves, choices).problems.map(({ where, what }) => `${where}: ${what}`);

  it('has none for a common shelf', () => {
    expect(whats([{}, { corner: 'left', aboveRim: 900 }])).toEqual([]);
  });

  it('tells one above the panels or behind the trim', () => {
    expect(whats([{ aboveRim: 1725 }], { trim: { top: false, sideTops: false } })).toEqual([
      'pieces.shelves.1: the shelf stands higher than the panels',
    ]);
    expect(whats([{ aboveRim: 1700 }])).toEqual([
      'pieces.shelves.1: the shelf stands higher than the lower edge of the trim',
    ]);
  });

  it('tells one too near the rim', () => {
    expect(whats([{ aboveRim: 50 }])).toEqual([
      'pieces.shelves.1: too little room is left between the shelf and the rim',
    ]);
  });

  it('tells one that reaches past a panel', () => {
    expect(whats([{ side: 780 }])).toEqual(['pieces.shelves.1: the shelf reaches past the right panel']);
  });

  it('tells one in the way of a fixture, and not one that clears it', () => {
    const fixtures = [
      { id: 'valve', kind: 'valve' as const, wall: 'right' as const, aboveRim: 500, fromBack: 150, hole: 90 },
    ];
    expect(whats([{}], { fixtures })).toEqual(['pieces.shelves.1: the shelf is in the way of hole valve']);
    expect(whats([{ aboveRim: 620 }], { fixtures })).toEqual([]);
    expect(whats([{ corner: 'left' }], { fixtures })).toEqual([]);
  });

  it('tells two too close in one corner', () => {
    expect(whats([{ aboveRim: 500 }, { aboveRim: 530 }])).toEqual(['pieces.shelves.2: too little room over shelf 1']);
  });

  it('tells two from both corners that meet along the back panel, unless one passes over the other', () => {
    const both = (left: number, right: number) =>
      shelved(box, [
        { corner: 'left', back: 800, aboveRim: left, slope: 0 },
        { corner: 'right', back: 750, aboveRim: right, slope: 0 },
      ]).problems;
    // the panels' faces are 1504 mm apart
    expect(both(600, 605)).toEqual([
      {
        where: 'pieces.shelves.2',
        what: 'the shelf runs into shelf 1 along the back panel',
        howMuch: expect.closeTo(46, 6),
      },
    ]);
    expect(both(600, 680)).toEqual([]);
  });

  it('tells an edge that a hump would touch', () => {
    const into = (bow: number) =>
      shelved(alcoveOf({ 'right.bowAcross': bow }), [{ gap: 0.2, side: 400 }]).problems.map(({ what }) => what);
    expect(into(2e-5)[0]).toMatch(/run into the bowed right panel/);
    expect(into(-2e-5)).toEqual([]);
  });
});

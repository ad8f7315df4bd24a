import { describe, expect, it } from 'vitest';
import type { Alcove } from '../../../../src/core/alcove';
import { gettingIn, movePoint, type WayIn } from '../../../../src/core/carry';
import type { JobInput } from '../../../../src/core/job-file';
import { fitPanel } from '../../../../src/core/panel';
import { covarianceOf, jobOf } from '../panel/fitting';
import { alcoveOf } from '../skewedAlcove';

function waysIn(alcove: Alcove, choices: Partial<JobInput> = {}, sd = 0) {
  const job = jobOf(choices);
  const covariance = covarianceOf(sd);
  const panel = (name: 'back' | 'left' | 'right') => fitPanel(alcove, covariance, job, name).panel;
  const panels = { back: panel('back'), left: panel('left'), right: panel('right') };
  return { job, panels, ...gettingIn(alcove, covariance, job, panels) };
}

/** Side walls that stand nearer together at the front than at the back, mm over the 760 mm of their depth, on each side. */
const closingBy = (mm: number) => alcoveOf({ 'left.square': mm / 760, 'right.square': -mm / 760 });

/** Deepest that any point of the panel comes into a side wall on its way, mm; negative = it stays clear. */
function deepest(
  { poses }: WayIn,
  alcove: Alcove,
  outline: [number, number][],
  faces: number[],
  zOf: (x: number, y: number) => number,
): number {
  const xs = outline.map(([x]) => x);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  let worst = Number.NEGATIVE_INFINITY;
  for (const pose of poses) {
    for (const [x, y] of outline) {
      for (const face of faces) {
        const [px, py, pz] = movePoint(pose, [x, y, zOf(x, y) + face], (from + to) / 2, (to - from) / 2);
        if (pz < alcove.front.left.value(0, py)) worst = Math.max(worst, alcove.left.value(pz, py) - px);
        if (pz < alcove.front.right.value(0, py)) worst = Math.max(worst, px - alcove.right.value(pz, py));
      }
    }
  }
  return worst;
}

describe('the back panel', () => {
  it('goes straight into a true alcove with its corner joint to spare', () => {
    const { back } = waysIn(alcoveOf({})).gettingIn.panels;
    expect(back.way).toBe('straight');
    expect(back.clearance).toBeCloseTo(2, 6);
    expect(back.poses.at(-1)).toMatchObject({ angle: 0, shift: [0, 0, 0] });
  });

  it('is turned where the opening is narrower, by what the narrower opening asks', () => {
    const { gettingIn: found, problems } = waysIn(closingBy(6));
    const { back } = found.panels;
    expect(back).toMatchObject({ way: 'tilted', tilt: { about: 'upright' }, bow: null });
    expect(back.straight.clearance).toBeCloseTo(2 - 6 * (1 - 8 / 760), 0);
    // 1516 mm wide, to pass 1508: cos⁻¹(1508/1516) is 5.9° without room on the sides
    expect(back.tilt!.angle).toBeGreaterThan(5.8);
    expect(back.tilt!.angle).toBeLessThan(9);
    expect(back.clearance).toBeGreaterThan(1.7);
    expect(problems).toEqual([]);
  });

  it('carries the ± of the two places where it is tightest', () => {
    const position = waysIn(alcoveOf({}), {}, 0.5).gettingIn.panels.back;
    // each wall by its position, slopes and bows, all independent with the same figure in their own unit: more than position
    expect(position.sd).toBeGreaterThan(0.5 / Math.SQRT2);
    expect(waysIn(alcoveOf({}), {}, 0).gettingIn.panels.back.sd).toBe(0);
    expect(position.doubtful).toBe(true);
  });

  it('is bowed where the swing home is barred, and refused where that would over-bend it', () => {
    // A wall that bellies in half way: neither straight nor turned past it.
    const bellied = alcoveOf({ 'left.square': 0.2, 'right.square': -0.2 });
    const thin = waysIn(bellied, { fit: { thickness: 1 } });
    expect(thin.gettingIn.panels.back.way).toBe('bowed');
    const { bow } = thin.gettingIn.panels.back;
    expect(bow!.strain).toBeLessThanOrEqual(0.3);
    expect(bow!.sagitta).toBeGreaterThan(100);
    expect(thin.problems).toEqual([]);

    const { strain } = bow!;
    const stated = waysIn(bellied, { fit: { thickness: 1 }, bedding: { strainLimit: (0.9 * strain) / 100 } });
    expect(stated.gettingIn.panels.back.way).toBe('blocked');
    const stiffer = waysIn(bellied, { fit: { thickness: 1 }, bedding: { modulusAcross: 6000 } });
    expect(stiffer.gettingIn.panels.back.bow!.force / bow!.force).toBeCloseTo(2, 9);

    const thick = waysIn(bellied, { fit: { thickness: 12 } });
    expect(thick.gettingIn.panels.back.way).toBe('blocked');
    expect(thick.problems).toEqual([
      {
        where: 'panels.back',
        what: expect.stringContaining('bend the sheet beyond its limit'),
        howMuch: expect.any(Number),
      },
    ]);
    expect(thick.problems[0]!.howMuch).toBeGreaterThan(250);
  });

  it.each([0, 4, 9, 14])('stays between the walls at every pose, walls %f mm nearer at the front', (closing) => {
    const alcove = closingBy(closing);
    const { gettingIn: found, panels, job } = waysIn(alcove);
    const { bed, thickness } = job.fit;
    const zOf = (x: number, y: number) => alcove.back.value(x, y);
    expect(deepest(found.panels.back, alcove, panels.back.outline, [bed, bed + thickness], zOf)).toBeLessThan(0);
  });

  it('is lifted over a rim that rises towards the room', () => {
    const { back } = waysIn(alcoveOf({ 'rim.levelAcross': 0.02 })).gettingIn.panels;
    expect(back.lift).toBeGreaterThan(0.02 * 700 - 3);
    expect(back.lift).toBeLessThan(0.02 * 760 + 1);
  });

  it('is turned about a level line under a header, or refused', () => {
    const under = (header: number) => waysIn(alcoveOf({}), { carrying: { header, ceiling: 1300 } });
    const tilted = under(700).gettingIn.panels.back;
    expect(tilted).toMatchObject({ way: 'tilted', tilt: { about: 'level' } });
    // 300 mm between rim and header
    const refused = under(-440);
    expect(refused.gettingIn.panels.back.way).toBe('blocked');
    expect(refused.problems.some(({ where, what }) => where === 'panels.back' && /header/.test(what))).toBe(true);
  });
});

describe('a side panel', () => {
  it('is not bounded where nothing hangs over it, and is kept clear of the back panel until it is home', () => {
    const { left, right } = waysIn(alcoveOf({ 'back.bowAcross': -1e-5 })).gettingIn.panels;
    expect(left).toMatchObject({ way: 'straight', clearance: null });
    // the back wall stands 5.8 mm further out in the middle than at its ends, the joint is 2
    const kept = Math.max(
      ...right.poses.filter(({ shift }) => Math.abs(shift[0]) > 0).map(({ shift }) => shift[2] % 868),
    );
    expect(kept).toBeGreaterThan(3);
  });

  it('is tipped up from its bottom edge where the ceiling leaves less than the rim makes it rise', () => {
    const ceiling = (room: number) =>
      waysIn(alcoveOf({ 'rim.bowAlong': -3e-5 }), { carrying: { ceiling: 980 + room } }).gettingIn.panels.left;
    expect(ceiling(60).way).toBe('straight');
    expect(ceiling(8).way).toBe('tilted');
    expect(ceiling(8).tilt).toMatchObject({ about: 'level', first: 'bottom' });
  });

  it('is leaned over under a header that is lower than it is high', () => {
    const { left } = waysIn(alcoveOf({}), { carrying: { header: 700 } }).gettingIn.panels;
    expect(left.tilt!.angle).toBeGreaterThan((Math.acos(1440 / 1717) * 180) / Math.PI);
    expect(left.tilt!.angle).toBeLessThan((Math.asin(1516 / 1717) * 180) / Math.PI);
    const { problems } = waysIn(alcoveOf({}), { carrying: { header: -300 } });
    expect(problems.map(({ where }) => where)).toContain('panels.left');
  });
});

describe('what is carried', () => {
  const carrying = {
    door: { width: 760, height: 2000 },
    corridor: { before: 900, after: 900, turn: 90 },
    stair: { width: 850, headroom: 1950, landing: 900, turn: 'quarter' as const },
    ceiling: 1150,
  };
  it('is judged at each place whose sizes are given, and at no other', () => {
    expect(waysIn(alcoveOf({})).gettingIn.carried.flatMap(({ passages }) => passages)).toEqual([]);
    const { carried } = waysIn(alcoveOf({}), { carrying }).gettingIn;
    expect(carried.map(({ panel, as }) => `${panel} ${as}`)).toHaveLength(6);
    for (const { passages } of carried) {
      expect(passages.map(({ place }) => place)).toEqual(['door', 'corridor', 'stair', 'landing', 'standing']);
      for (const { sd, clearance, passes } of passages) {
        expect(sd).toBeGreaterThan(0);
        expect(passes).toBe(clearance >= 0);
      }
    }
  });
  it('is a problem where a panel, cut, does not pass; a sheet as bought can be cut first', () => {
    const narrow = waysIn(alcoveOf({}), { carrying: { corridor: { before: 500, after: 500, turn: 90 } } });
    // 2√2 · 500 − 2 · 6 = 1402: the back panel, 1516 by 1717, is longer
    const sheet = narrow.gettingIn.carried.find(({ panel, as }) => panel === 'back' && as === 'panel')!;
    expect(sheet.passages[0]!.clearance).toBeCloseTo(1402.2 - sheet.height, 0);
    expect(narrow.problems.map(({ where }) => where)).toEqual(['panels.back', 'panels.left', 'panels.right']);
  });
  it('tells in all what a door has to spare, or lacks', () => {
    const through = (width: number) => waysIn(alcoveOf({}), { carrying: { door: { width, height: 2000 } } });
    // upright the panels are 6 mm thick
    const [passage] = through(760).gettingIn.carried.find(({ panel }) => panel === 'left')!.passages;
    expect(passage).toMatchObject({ passes: true, lean: 0, clearance: expect.closeTo(754, 9) });
    expect(through(2).problems.map(({ howMuch }) => howMuch)).toEqual([4, 4, 4].map((mm) => expect.closeTo(mm, 6)));
  });
});

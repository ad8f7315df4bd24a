import { describe, expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import type { Fixture, JobInput } from '../../../../src/core/job-file';
import { contourRise } from '../../../../src/core/panel';
import { holeCentre } from '../../../../src/core/panel/holes';
import { alcoveOf, alcoveWith, expectDerivatives, skewedParameters } from '../skewedAlcove';
import { fitted, jobOf } from './fitting';

const valve = (more: Partial<Fixture> = {}): Fixture =>
  ({
    id: 'valve',
    kind: 'valve',
    wall: 'right',
    aboveRim: 330,
    fromBack: 380,
    fromBackOf: 'panel',
    hole: 95,
    takenAt: 'face',
    ...more,
  }) as Fixture;
const bar: Fixture = {
  id: 'bar',
  kind: 'grab-bar',
  wall: 'back',
  aboveRim: 360,
  fromPlumbLine: -240,
  hole: 20,
  takenAt: 'face',
};
const job = jobOf({
  rim: {
    profile: [
      [0, 0],
      [40, -6],
      [60, -20],
    ],
  },
});

describe('holeCentre', () => {
  it("stands over the finished rim and out from the back panel's face or the bare wall", () => {
    const box = alcoveOf({});
    const centre = (fixture: Fixture) => {
      const { u, v } = holeCentre(box, job, fixture);
      return [u.value, v.value];
    };
    expect(centre(valve())).toEqual([388, -410]);
    expect(centre(valve({ wall: 'left' }))).toEqual([388, -410]);
    expect(centre(valve({ fromBackOf: 'wall' } as Partial<Fixture>))).toEqual([380, -410]);
    expect(centre(bar)).toEqual([-240, -380]);
  });

  it('counts from the rim as it is under the fixture, its contour included', () => {
    const alcove = alcoveOf({ 'rim.levelAlong': 0.01, 'rim.levelAcross': -0.02 });
    // at the right panel's face, x = 752, z = 388; on the back panel at z = 8
    expect(holeCentre(alcove, job, valve()).v.value).toBeCloseTo(-740 + 7.52 - 7.76 + 330, 9);
    expect(holeCentre(alcove, job, bar).v.value).toBeCloseTo(-740 - 2.4 - 0.16 + 360, 9);
    expect(holeCentre(alcoveOf({}), job, valve({ fromBack: 712 } as Partial<Fixture>)).v.value).toBeCloseTo(
      -740 - 3 + 330,
      9,
    );
  });

  it('counts from the back panel as it stands at that height', () => {
    expect(holeCentre(alcoveOf({ 'back.plumb': 0.02 }), job, valve()).u.value).toBeCloseTo(388 - 0.02 * 410, 9);
  });

  it("lies where both measurements meet at the panel's face, in skewed alcoves", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      for (const wall of ['left', 'right'] as const) {
        const { u, v } = holeCentre(alcove, job, valve({ wall, fromBack: 690 } as Partial<Fixture>));
        const x = alcove[wall].value(u.value, v.value) + (wall === 'left' ? 8 : -8);
        expect(u.value - alcove.back.value(x, v.value) - 8).toBeCloseTo(690, 8);
        const rim = alcove.rim.value(x, u.value) + contourRise(job.rim, constant(u.value)).value;
        expect(v.value - rim).toBeCloseTo(330, 8);
      }
      const { u, v } = holeCentre(alcove, job, bar);
      expect(u.value).toBe(-240);
      expect(v.value - alcove.rim.value(-240, alcove.back.value(-240, v.value) + 8)).toBeCloseTo(360, 8);
    }
  });

  it('goes on square to a leaning wall where it was taken at the bare wall', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      for (const wall of ['left', 'right'] as const) {
        const { u, v } = holeCentre(
          alcove,
          job,
          valve({ wall, fromBack: 400, takenAt: 'wall', fromBackOf: 'wall' } as Partial<Fixture>),
        );
        // the foot of the pipe: back along the wall's normal from the panel's face, 8 mm, found by Newton's method
        const foot = { z: u.value, y: v.value };
        for (let step = 0; step < 20; step++) {
          const [lz, ly] = alcove[wall].gradient(foot.z, foot.y).map((slope) => (wall === 'left' ? slope : -slope));
          const long = Math.sqrt(1 + lz! ** 2 + ly! ** 2);
          foot.z = u.value + (8 * lz!) / long;
          foot.y = v.value + (8 * ly!) / long;
        }
        const x = alcove[wall].value(foot.z, foot.y);
        expect(foot.z - alcove.back.value(x, foot.y)).toBeCloseTo(400, 6);
        const rim = alcove.rim.value(x, foot.z) + contourRise(job.rim, constant(foot.z)).value;
        expect(foot.y - rim).toBeCloseTo(330, 6);
      }
    }
    const leaning = alcoveOf({ 'right.plumb': 0.05 });
    const straight = holeCentre(leaning, job, valve()).v.value;
    const square = holeCentre(leaning, job, valve({ takenAt: 'wall' })).v.value;
    expect(Math.abs(square - straight)).toBeCloseTo((8 * 0.05) / Math.hypot(1, 0.05), 2);
  });

  it('carries its derivatives', () => {
    for (let seed = 1; seed <= 5; seed++) {
      const parameters = skewedParameters(seed);
      for (const fixture of [valve(), valve({ wall: 'left', fromBackOf: 'wall' } as Partial<Fixture>)]) {
        expect(expectDerivatives((alcove) => holeCentre(alcove, job, fixture).u, parameters, `${seed} u`)).toBe(15);
        expect(expectDerivatives((alcove) => holeCentre(alcove, job, fixture).v, parameters, `${seed} v`)).toBe(15);
      }
      expect(expectDerivatives((alcove) => holeCentre(alcove, job, bar).v, parameters, `${seed} bar`)).toBe(9);
    }
  });
});

describe('panelHoles', () => {
  const fixtures = [
    valve(),
    { ...valve({ wall: 'left' }), id: 'spout', hole: 30 } as Fixture,
    bar,
  ] as JobInput['fixtures'];

  it("are those of the panel's wall, as the job gives them and where they lie", () => {
    const { panel } = fitted(alcoveOf({}), 'right', { fixtures });
    expect(panel.holes).toEqual([
      {
        id: 'valve',
        kind: 'valve',
        u: 388,
        v: -410,
        sheet: [388, -410],
        diameter: 95,
        sd: { u: 0, v: 0 },
        aboveRim: 330,
        from: { of: 'panel', distance: 380 },
        edgeDistance: expect.closeTo(327 - 47.5, 9),
      },
    ]);
    expect(fitted(alcoveOf({}), 'left', { fixtures }).panel.holes.map(({ id }) => id)).toEqual(['spout']);
    expect(fitted(alcoveOf({}), 'back', { fixtures }).panel.holes).toMatchObject([
      { id: 'bar', from: { of: 'plumb-line', distance: -240 } },
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Alcove } from '../../../../src/core/alcove';
import type { Reading, Side, Station, WallName } from '../../../../src/core/job-file';
import { cornerAngle } from '../../../../src/core/survey';
import { gapFromPlane, observe, type SingleReading } from '../../../../src/core/survey/observe';
import { exactValue, plausibleAlcove, randomFrom, type TrueAlcove } from '../../../simulate';
import { alcoveOf, alcoveWith, expectDerivatives, skewedParameters } from '../skewedAlcove';

const value = (alcove: Alcove, reading: SingleReading): number => observe(reading, alcove).value;
const corner = (side: Side, height: number): SingleReading => ({
  id: 'r',
  kind: 'tape-to-corner',
  side,
  height,
  value: 1,
});
const drop = (wall: WallName, at: number): SingleReading => ({ id: 'r', kind: 'tape-to-rim', wall, at, value: 1 });
const edge = (wall: WallName, from: Station, to: Station): SingleReading => ({
  id: 'r',
  kind: 'straightedge',
  wall,
  from,
  to,
  value: 1,
});
const square = (side: Side, alongBack: number, alongSide: number): SingleReading => ({
  id: 'r',
  kind: 'square',
  side,
  height: 0,
  alongBack,
  alongSide,
  value: 1,
});
const angle = (side: Side, height = 0): SingleReading => ({ id: 'r', kind: 'angle', side, height, value: 90 });

describe('observation equations', () => {
  it('tape to corner: from the plumb line along the back wall', () => {
    const alcove = alcoveOf({ 'left.plumb': 0.01, 'right.plumb': 0.02, 'left.square': 0.1, 'back.plumb': 0.01 });
    // left at y = 700: z = 7, x = −760 + 7 + 0.7
    expect(value(alcove, corner('left', 700))).toBeCloseTo(752.3, 9);
    expect(value(alcove, corner('right', 700))).toBeCloseTo(774, 9);
  });

  it('tape to corner: straight between points of a twisted back wall', () => {
    // b = 2e-5 x y: at y = 1000 the corner lies 0.02 · 760 nearer, the plumb line stays
    const alcove = alcoveOf({ 'back.twist': 2e-5 });
    expect(value(alcove, corner('right', 1000))).toBeCloseTo(Math.hypot(760, 15.2), 9);
  });

  it('tape to rim: a drop, positive downward', () => {
    const alcove = alcoveOf({ 'rim.levelAlong': 0.01, 'rim.levelAcross': -0.02 });
    expect(value(alcove, drop('back', 500))).toBeCloseTo(735, 9);
    expect(value(alcove, drop('back', -500))).toBeCloseTo(745, 9);
    expect(value(alcove, drop('left', 600))).toBeCloseTo(740 + 7.6 + 12, 9);
    expect(value(alcove, drop('right', 600))).toBeCloseTo(740 - 7.6 + 12, 9);
    expect(value(alcoveOf({ 'rim.height': 55 }), drop('back', 0))).toBe(-55);
  });

  it('span: between the side walls at a height, at a distance from the back wall', () => {
    const alcove = alcoveOf({ 'left.square': -0.02, 'right.square': 0.03, 'right.plumb': 0.01 });
    expect(value(alcove, { id: 'r', kind: 'span', height: 500, at: 600, value: 1 })).toBeCloseTo(1520 + 12 + 18 + 5, 9);
  });

  it.each([
    ['back', { 'back.bowAcross': 8e-6 }, { 'back.bowUp': 8e-6 }],
    ['left', { 'left.bowAcross': 8e-6 }, { 'left.bowUp': 8e-6 }],
    ['right', { 'right.bowAcross': -8e-6 }, { 'right.bowUp': -8e-6 }],
  ] as const)('straightedge on the %s wall: hollow positive, hump negative', (wall, across, up) => {
    const level = edge(wall, { at: 100, height: 200 }, { at: 700, height: 200 });
    const upright = edge(wall, { at: 300, height: -500 }, { at: 300, height: 700 });
    // a parabola k a² over a chord of length c: k c²/4
    expect(value(alcoveOf(across), level)).toBeCloseTo((8e-6 * 600 ** 2) / 4, 9);
    expect(value(alcoveOf(up), upright)).toBeCloseTo((8e-6 * 1200 ** 2) / 4, 9);
    const hump = Object.fromEntries(Object.entries(up).map(([name, k]) => [name, -k]));
    expect(value(alcoveOf(hump), upright)).toBeCloseTo((-8e-6 * 1200 ** 2) / 4, 9);
    const leaning = { [`${wall}.plumb`]: 0.02, ...(wall === 'back' ? {} : { [`${wall}.square`]: 0.03 }) };
    expect(value(alcoveOf(leaning), level)).toBeCloseTo(0, 9);
    expect(value(alcoveOf(leaning), upright)).toBeCloseTo(0, 9);
  });

  it('square: 3-4-5 in a square corner, longer in an open one', () => {
    expect(value(alcoveOf({}), square('left', 600, 450))).toBeCloseTo(750, 9);
    // law of cosines in a corner of 92°: the left wall runs outward, the right wall too
    const open = Math.tan((2 * Math.PI) / 180);
    const expected = Math.sqrt(600 ** 2 + 450 ** 2 - 2 * 600 * 450 * Math.cos((92 * Math.PI) / 180));
    expect(value(alcoveOf({ 'left.square': -open }), square('left', 600, 450))).toBeCloseTo(expected, 8);
    expect(value(alcoveOf({ 'right.square': open }), square('right', 600, 450))).toBeCloseTo(expected, 8);
  });

  it('square: both distances run straight from the corner, over a bow too', () => {
    const alcove = alcoveOf({ 'left.bowAcross': 2e-5, 'back.bowAcross': 1e-5 });
    const reading = square('left', 600, 450);
    const { x, z } = { x: value(alcove, corner('left', 0)), z: 0 };
    expect(x).toBeGreaterThan(0);
    expect(z).toBe(0);
    expect(value(alcove, reading)).toBeCloseTo(
      exactValue(trueOf({ left: { zz: 2e-5 }, back: { xx: 1e-5 } }), {
        id: 'r',
        kind: 'square',
        side: 'left',
        height: 0,
        alongBack: 600,
        alongSide: 450,
      }),
      8,
    );
  });

  it('angle: inside the corner, in degrees', () => {
    const degree = Math.PI / 180;
    expect(value(alcoveOf({}), angle('left'))).toBeCloseTo(90, 10);
    expect(value(alcoveOf({ 'left.square': Math.tan(degree) }), angle('left'))).toBeCloseTo(89, 10);
    expect(value(alcoveOf({ 'right.square': -Math.tan(degree) }), angle('right'))).toBeCloseTo(89, 10);
    expect(value(alcoveOf({ 'right.square': Math.tan(degree) }), angle('right'))).toBeCloseTo(91, 10);
    // a back wall that comes forward to the right opens the left corner and closes the right one
    const turned = alcoveOf({ 'back.twist': Math.tan(degree) / 500 });
    expect(value(turned, angle('left', 500))).toBeCloseTo(89, 10);
    expect(value(turned, angle('right', 500))).toBeCloseTo(91, 10);
    expect(cornerAngle(turned, 'left', 500).value).toBeCloseTo(89 * degree, 12);
  });

  it('diagonal: straight between points of the corners', () => {
    const diagonal: Reading = {
      id: 'r',
      kind: 'diagonal',
      from: { side: 'left', height: -600 },
      to: { side: 'right', height: 900 },
      value: 1,
    };
    expect(value(alcoveOf({}), diagonal)).toBeCloseTo(Math.hypot(1520, 1500), 9);
    expect(value(alcoveOf({ 'back.plumb': 0.02 }), diagonal)).toBeCloseTo(Math.hypot(1520, 1500, 30), 9);
  });

  it("depth: in the side wall's face from the corner to the front edge", () => {
    const alcove = alcoveOf({ 'front.left.plumb': 0.01, 'left.square': 0.05, 'back.plumb': 0.02 });
    const run = 760 + 5 - 10;
    expect(value(alcove, { id: 'r', kind: 'depth', wall: 'left', height: 500, value: 1 })).toBeCloseTo(
      Math.hypot(run, 0.05 * run),
      9,
    );
  });

  it.each([
    ['back', 1],
    ['left', 1],
    ['right', -1],
  ] as const)('gap on the %s wall: larger where the wall is further away', (wall, intoRoom) => {
    const alcove = alcoveOf({ [`${wall}.plumb`]: intoRoom * 0.01 }); // leans into the room going up
    const gap = (height: number) => gapFromPlane(wall, { at: 300, height }, alcove).value;
    expect(gap(1000) - gap(0)).toBeCloseTo(-10, 9);
  });
});

describe('in skewed alcoves', () => {
  const random = randomFrom(11);
  const between = (low: number, high: number): number => random.between(low, high);
  const side = (): Side => (random.between(0, 1) < 0.5 ? 'left' : 'right');
  const wall = (): WallName => (['back', 'left', 'right'] as const)[Math.floor(random.between(0, 3))]!;
  const station = (on: WallName): Station => ({
    at: on === 'back' ? between(-700, 700) : between(20, 740),
    height: between(-700, 980),
  });
  const KINDS: Record<SingleReading['kind'], () => SingleReading> = {
    'tape-to-corner': () => corner(side(), between(-700, 980)),
    'tape-to-rim': () => {
      const on = wall();
      return drop(on, station(on).at);
    },
    span: () => ({ id: 'r', kind: 'span', height: between(-700, 980), at: between(20, 740), value: 1 }),
    straightedge: () => {
      const on = wall();
      return edge(on, station(on), station(on));
    },
    square: () =>
      ({ ...square(side(), between(300, 700), between(300, 700)), height: between(-700, 980) }) as SingleReading,
    angle: () => angle(side(), between(-700, 980)),
    diagonal: () => ({
      id: 'r',
      kind: 'diagonal',
      from: { side: 'left', height: between(-700, 980) },
      to: { side: 'right', height: between(-700, 980) },
      value: 1,
    }),
    depth: () => ({ id: 'r', kind: 'depth', wall: side(), height: between(-700, 980), value: 1 }),
  };

  it.each(Object.entries(KINDS))('%s carries its derivatives', (kind, reading) => {
    for (let seed = 1; seed <= 12; seed++) {
      const taken = reading();
      const moved = expectDerivatives((alcove) => observe(taken, alcove), skewedParameters(seed), `${kind} ${seed}`);
      expect(moved).toBeGreaterThan(0);
    }
  });

  it('a gap carries its derivatives', () => {
    for (const on of ['back', 'left', 'right'] as const) {
      const place = station(on);
      expect(expectDerivatives((alcove) => gapFromPlane(on, place, alcove), skewedParameters(4), on)).toBe(
        on === 'back' ? 4 : 6,
      );
    }
  });

  it.each(Object.entries(KINDS))('%s is what a tape in the same alcove shows', (kind, reading) => {
    for (let seed = 1; seed <= 12; seed++) {
      const truth = plausibleAlcove(seed);
      const taken = reading();
      const { value: _, ...unread } = taken;
      // the simulator's angle comes from chords 2 mm long
      expect(value(modelOf(truth), taken), `${kind} ${seed}`).toBeCloseTo(
        exactValue(truth, unread as typeof taken),
        kind === 'angle' ? 5 : 7,
      );
    }
  });

  it('stays finite on walls that no one would call walls', () => {
    const wild = alcoveWith(skewedParameters(3).map((each, j) => each * (j % 3 === 0 ? 400 : 50)));
    for (const [kind, reading] of Object.entries(KINDS)) {
      const { value: shown, gradient } = observe(reading(), wild);
      expect(Number.isFinite(shown), kind).toBe(true);
      expect(gradient!.every(Number.isFinite), kind).toBe(true);
    }
  });
});

function trueOf({
  left = {},
  back = {},
}: {
  left?: Partial<TrueAlcove['left']>;
  back?: Partial<TrueAlcove['back']>;
}): TrueAlcove {
  const flat = { y: 0, z: 0, yz: 0, yy: 0, zz: 0 };
  return {
    back: { y: 0, xy: 0, xx: 0, yy: 0, ...back },
    left: { c: -760, ...flat, ...left },
    right: { c: 760, ...flat },
    rim: { c: -740, x: 0, z: 0, xx: 0, zz: 0 },
    front: { left: { f0: 760, f1: 0 }, right: { f0: 760, f1: 0 } },
    humps: [],
  };
}

function modelOf({ back, left, right, rim, front }: TrueAlcove): Alcove {
  const side = (name: Side, { c, y, z, yz, yy, zz }: TrueAlcove['left']) => ({
    [`${name}.position`]: c,
    [`${name}.plumb`]: y,
    [`${name}.square`]: z,
    [`${name}.twist`]: yz,
    [`${name}.bowUp`]: yy,
    [`${name}.bowAcross`]: zz,
  });
  return alcoveOf({
    'back.plumb': back.y,
    'back.twist': back.xy,
    'back.bowAcross': back.xx,
    'back.bowUp': back.yy,
    ...side('left', left),
    ...side('right', right),
    'rim.height': rim.c,
    'rim.levelAlong': rim.x,
    'rim.levelAcross': rim.z,
    'rim.bowAlong': rim.xx,
    'rim.bowAcross': rim.zz,
    'front.left.position': front.left.f0,
    'front.left.plumb': front.left.f1,
    'front.right.position': front.right.f0,
    'front.right.plumb': front.right.f1,
  });
}

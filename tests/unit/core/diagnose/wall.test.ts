import { describe, expect, it } from 'vitest';
import { alcoveOf } from '../skewedAlcove';
import { diagnosed, diagnosisOf } from './diagnosing';

/** Which way a parameter of the wall must go to lean, bow or twist it into the room. */
const WALLS = [
  ['back', 1],
  ['left', 1],
  ['right', -1],
] as const;
const HEIGHT = 980 + 740;

describe.each(WALLS)('the %s wall', (name, into) => {
  const wall = (values: Record<string, number>) =>
    diagnosisOf(Object.fromEntries(Object.entries(values).map(([key, value]) => [`${name}.${key}`, value]))).walls[
      name
    ];

  it('is true in a true box', () => {
    expect(wall({})).toMatchObject({ bow: 0, bowAcross: 0, twist: 0, plumbSd: 0 });
    expect(Math.abs(wall({}).plumb)).toBe(0);
  });

  it('leans into the room: plumb positive, mm per m', () => {
    expect(wall({ plumb: into * 0.012 }).plumb).toBeCloseTo(12, 9);
    expect(wall({ plumb: into * -0.004 }).plumb).toBeCloseTo(-4, 9);
    expect(wall({ plumb: 0.012 }).bow).toBeCloseTo(0, 9);
  });

  it('is hollow: bow positive, k(h/2)²', () => {
    expect(wall({ bowUp: into * 4e-6 }).bow).toBeCloseTo(4e-6 * (HEIGHT / 2) ** 2, 9);
    expect(wall({ bowUp: into * -4e-6 }).bow).toBeCloseTo(-4e-6 * (HEIGHT / 2) ** 2, 9);
    // a parabola about the level line leans on the whole: k (top + bottom)
    expect(wall({ bowUp: into * 4e-6 }).plumb).toBeCloseTo(4e-3 * (980 - 740), 9);
  });

  it('is hollow across: k(w/2)²', () => {
    const width = name === 'back' ? 1520 : 760;
    expect(wall({ bowAcross: into * 4e-6 }).bowAcross).toBeCloseTo(4e-6 * (width / 2) ** 2, name === 'back' ? 9 : 6);
  });

  it('is twisted by how far its fourth corner stands off the others', () => {
    const width = name === 'back' ? 1520 : 760;
    expect(wall({ twist: into * 3e-6 }).twist).toBeCloseTo(3e-6 * width * HEIGHT, 8);
    expect(wall({ twist: into * 3e-6 }).bow).toBeCloseTo(0, 9);
  });

  it('is sampled as a height field, a little above the panels', () => {
    const { sampled } = wall({ plumb: 0.01 });
    expect(sampled.at).toHaveLength(17);
    expect([sampled.height[0], sampled.height.at(-1)]).toEqual([-740, 980 + 150]);
    expect([sampled.at[0], sampled.at.at(-1)]).toEqual(name === 'back' ? [-760, 760] : [0, 760]);
    const base = name === 'back' ? 0 : name === 'left' ? -760 : 760;
    sampled.height.forEach((height, i) => {
      expect(sampled.value[i]).toHaveLength(17);
      for (const value of sampled.value[i]!) expect(value).toBeCloseTo(base + 0.01 * height, 9);
    });
  });
});

describe('standard deviations of a wall', () => {
  it('come from its parameters', () => {
    const { left, back } = diagnosed(alcoveOf({}), {}, 1e-6).walls;
    // at mid-depth 380: ∂(top − bottom) is h for plumb, 380 h for twist, top² − bottom² for the bow; a metre is 1000/h
    const bend = 980 ** 2 - 740 ** 2;
    expect(left.plumbSd).toBeCloseTo((1e-6 * 1000 * Math.hypot(HEIGHT, 380 * HEIGHT, bend)) / HEIGHT, 12);
    expect(left.bowSd).toBeCloseTo(1e-6 * (HEIGHT / 2) ** 2, 9);
    expect(back.twistSd).toBeCloseTo(1e-6 * 1520 * HEIGHT, 9);
    expect(back.sampled.sd[0]![8]).toBeCloseTo(1e-6 * Math.hypot(740, 740 ** 2), 9);
  });
});

import { describe, expect, it } from 'vitest';
import { insideCorner } from '../../../../src/core/alcove';
import { constant } from '../../../../src/core/dual';
import { developMap } from '../../../../src/core/flatten';
import type { WallName } from '../../../../src/core/job-file';
import { cross, dot, fold, levelStrip, uprightStrip, type Vec3 } from '../../../../src/core/piece';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';

const WALLS: WallName[] = ['back', 'left', 'right'];
const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe.each(WALLS)('strips on the %s wall', (wall) => {
  const reach: [number, number] = wall === 'back' ? [-700, 700] : [20, 760];

  it('lie where the wall is, off it, on a skewed and bowed wall', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const onWall = (u: number, v: number): Vec3 => {
        const h = alcove[wall].value(u, v);
        return wall === 'back' ? [u, v, h + 8] : [wall === 'left' ? h + 8 : h - 8, v, u];
      };
      const level = levelStrip(alcove, wall, 8, 900);
      const placeLevel = fold({ axis: 'x', stations: level.stations(...reach) });
      for (const u of [reach[0], 0.4 * reach[0] + 0.6 * reach[1], reach[1]]) {
        for (const v of [900, 950])
          expect(distance(placeLevel(...level.toFlat(u, v), 0), onWall(u, v))).toBeLessThan(0.06);
      }
      const upright = uprightStrip(alcove, wall, 8, reach[1]);
      const placeUpright = fold({ axis: 'y', stations: upright.stations(-1200, 980) });
      for (const v of [-1200, -300, 0, 980]) {
        for (const u of [reach[1], reach[1] - 40]) {
          expect(distance(placeUpright(...upright.toFlat(u, v), 0), onWall(u, v))).toBeLessThan(0.06);
        }
      }
    }
  });

  it('have right-handed frames of unit axes that point into the room', () => {
    const alcove = alcoveWith(skewedParameters(4));
    const inwards: Vec3 = wall === 'back' ? [0, 0, 1] : wall === 'left' ? [1, 0, 0] : [-1, 0, 0];
    for (const strip of [levelStrip(alcove, wall, 8, 900), uprightStrip(alcove, wall, 8, reach[1])]) {
      for (const { frame } of strip.stations(reach[0], reach[1])) {
        for (const axis of [frame.x, frame.y, frame.w]) expect(Math.hypot(...axis)).toBeCloseTo(1, 12);
        const turned = cross(frame.x, frame.y);
        turned.forEach((value, i) => {
          expect(value).toBeCloseTo(frame.w[i]!, 12);
        });
        expect(dot(frame.w, inwards)).toBeGreaterThan(0.99);
        expect(frame.y[1]).toBeGreaterThan(0.99);
      }
    }
  });

  it('keep lengths along a bow', () => {
    const alcove = alcoveOf({ [`${wall}.bowAcross`]: 2e-5, [`${wall}.bowUp`]: -1.5e-5 });
    const level = levelStrip(alcove, wall, 0, 0);
    const [from, to] = reach;
    const steps = 4000;
    let along = 0;
    for (let k = 0; k < steps; k++) {
      const [a, b] = [from + ((to - from) * k) / steps, from + ((to - from) * (k + 1)) / steps];
      along += Math.hypot(b - a, alcove[wall].value(b, 0) - alcove[wall].value(a, 0));
    }
    expect(Math.abs(level.toFlat(to, 0)[0] - level.toFlat(from, 0)[0])).toBeCloseTo(along, 6);
    expect(along).toBeGreaterThan(to - from);
  });

  it('lose less than 0.01 mm of a width of 300 mm on a leaning wall with a bow of 10 mm/m²', () => {
    const alcove = alcoveOf({ [`${wall}.plumb`]: 0.008, [`${wall}.bowUp`]: 1e-5 });
    const strip = levelStrip(alcove, wall, 0, 0);
    const [u] = reach;
    const steps = 3000;
    let up = 0;
    for (let k = 0; k < steps; k++) {
      const [a, b] = [(300 * k) / steps, (300 * (k + 1)) / steps];
      up += Math.hypot(b - a, alcove[wall].value(u, b) - alcove[wall].value(u, a));
    }
    const width = strip.toFlat(u, 300)[1] - strip.toFlat(u, 0)[1];
    expect(Math.abs(up - width)).toBeLessThan(0.01);
  });

  it('take for straight a level line that bends by less than 0.1 mm on a leaning wall with such a bow', () => {
    const alcove = alcoveOf({ [`${wall}.plumb`]: 0.008, [`${wall}.bowAcross`]: 1e-5 });
    // a cylinder, so that it unrolls without strain
    const { toSheet, strain } = developMap(alcove[wall], { u: reach, v: [0, 300] });
    expect(strain).toBeLessThan(1e-9);
    const [from, middle, to] = [reach[0], (reach[0] + reach[1]) / 2, reach[1]].map((u) => toSheet(u, 0));
    const sagitta = Math.abs(middle![1] - (from![1] + to![1]) / 2);
    expect(sagitta).toBeGreaterThan(0.005);
    expect(sagitta).toBeLessThan(0.1);
  });

  it("run with ascending stations, x to the viewer's right", () => {
    const strip = levelStrip(alcoveOf({}), wall, 0, 0);
    const ats = strip.stations(...reach).map(({ at }) => at);
    expect(ats).toEqual(ats.toSorted((a, b) => a - b));
    const [x] = strip.toFlat(reach[1], 0);
    expect(x).toBeCloseTo(wall === 'left' ? -760 : reach[1], 9);
    const back = strip.stations(reach[1], reach[0]).map(({ at }) => at);
    expect(back[0]).toBeCloseTo(ats[0]!, 9);
  });

  it('place a point square out of the strip as folding does', () => {
    const alcove = alcoveWith(skewedParameters(7));
    const strip = levelStrip(alcove, wall, 8, 900);
    const place = fold({ axis: 'x', stations: strip.stations(...reach) });
    const { x, y, z } = strip.place(constant(reach[1]), constant(920), 6);
    expect(distance(place(...strip.toFlat(reach[1], 920), 6), [x.value, y.value, z.value])).toBeLessThan(0.01);
  });
});

it('a strip that ends in the inside corner folds to the corner', () => {
  const alcove = alcoveWith(skewedParameters(2));
  const { x, y, z } = insideCorner(alcove, 'right', 900);
  const strip = levelStrip(alcove, 'back', 0, 900);
  const place = fold({ axis: 'x', stations: strip.stations(-700, x.value) });
  expect(distance(place(...strip.toFlat(x.value, 900), 0), [x.value, y.value, z.value])).toBeLessThan(1e-6);
});

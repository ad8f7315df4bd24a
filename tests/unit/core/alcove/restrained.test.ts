import { describe, expect, it } from 'vitest';
import { restrained } from '../../../../src/core/alcove';
import { constant } from '../../../../src/core/dual';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';

describe('restrained', () => {
  it('leaves an alcove that can stand as it is', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const result = restrained(alcove, 980);
      expect(result.beyond).toEqual([]);
      for (const name of ['back', 'left', 'right', 'rim'] as const) expect(result.alcove[name]).toBe(alcove[name]);
      expect(result.alcove.front.left).toBe(alcove.front.left);
    }
  });

  it('leaves corners of 60° and 120°', () => {
    const open = Math.tan(Math.PI / 6);
    expect(restrained(alcoveOf({ 'left.square': -open, 'right.square': -open }), 980).beyond).toEqual([]);
  });

  it.each([
    ['back.plumb', 0.5, 'walls.back', 'back wall'],
    ['back.bowAcross', 4e-4, 'walls.back', 'back wall'],
    ['left.plumb', -0.5, 'walls.left', 'left wall'],
    ['right.square', 2, 'walls.right', 'right wall'],
    ['right.position', 90_000, 'walls.right', 'right wall'],
    ['rim.levelAlong', 0.3, 'rim', 'rim'],
    ['rim.height', -90_000, 'rim', 'rim'],
    ['front.left.plumb', 0.4, 'front.left', 'front edge of the left wall'],
    ['front.right.position', 70_000, 'front.right', 'front edge of the right wall'],
  ])('names what %s = %d puts beyond, and holds it', (name, value, where, words) => {
    const { alcove, beyond } = restrained(alcoveOf({ [name]: value }), 980);
    expect(beyond).toEqual([{ where, words }]);
    for (const a of [-760, 0, 760]) {
      for (const b of [-740, 0, 980]) {
        for (const wall of ['back', 'left', 'right'] as const) {
          const [along, up] = alcove[wall].gradient(wall === 'back' ? a : Math.abs(a), b);
          expect(Math.abs(along)).toBeLessThanOrEqual(wall === 'back' ? 0.21 : 0.76);
          expect(Math.abs(up)).toBeLessThanOrEqual(0.21);
          expect(Math.abs(alcove[wall].value(a, b))).toBeLessThan(7000);
        }
      }
    }
  });

  it('keeps the middle of a flattened wall and its derivatives', () => {
    const wild = alcoveOf({ 'left.plumb': 0.8, 'left.bowUp': 1e-4 });
    const { left } = restrained(wild, 980).alcove;
    expect(left.value(380, 120)).toBeCloseTo(wild.left.value(380, 120), 6);
    const h = 1e-3;
    for (const [z, y] of [
      [100, -500],
      [600, 800],
    ] as const) {
      const { value, gradient } = left.at(constant(z), constant(y));
      expect(value).toBeCloseTo(left.value(z, y), 9);
      expect(gradient![4]).toBe(1); // moves with the wall's position, however flat
      expect((left.value(z, y + h) - left.value(z, y - h)) / (2 * h)).toBeCloseTo(left.gradient(z, y)[1], 6);
      expect((left.gradient(z, y + h)[1] - left.gradient(z, y - h)[1]) / (2 * h)).toBeCloseTo(
        left.curvature(z, y)[2],
        9,
      );
      expect(left.slopeAt(constant(z), constant(y)).value).toBeCloseTo(left.gradient(z, y)[0], 12);
    }
  });

  it('holds walls so wild that they do not meet', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const wild = alcoveWith(skewedParameters(seed).map((each, j) => each * 10 ** (j % 6)));
      const { alcove, beyond } = restrained(wild, 980);
      expect(beyond.length).toBeGreaterThan(0);
      for (const name of ['back', 'left', 'right', 'rim'] as const) {
        expect(Math.abs(alcove[name].value(300, 300))).toBeLessThan(12_000);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { distance, insideCorner } from '../../../../src/core/alcove';
import { constant } from '../../../../src/core/dual';
import { alcoveOf, alcoveWith, expectDerivatives, skewedParameters } from '../skewedAlcove';

describe('insideCorner', () => {
  it('lies where both walls meet at that height', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      for (const side of ['left', 'right'] as const) {
        for (const height of [-700, 0, 980]) {
          const { x, y, z } = insideCorner(alcove, side, height);
          expect(y.value).toBe(height);
          expect(alcove.back.value(x.value, height)).toBeCloseTo(z.value, 9);
          expect(alcove[side].value(z.value, height)).toBeCloseTo(x.value, 9);
        }
      }
    }
  });

  it('follows a leaning back wall along an out-of-square side', () => {
    // z = 0.01 y; x = -760 + 0.1 z: at y = 500, z = 5 and x = -759.5
    const alcove = alcoveOf({ 'back.plumb': 0.01, 'left.square': 0.1 });
    const { x, z } = insideCorner(alcove, 'left', 500);
    expect(x.value).toBeCloseTo(-759.5, 10);
    expect(z.value).toBeCloseTo(5, 10);
  });

  it('carries its derivatives', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const parameters = skewedParameters(seed);
      for (const axis of ['x', 'z'] as const) {
        const moved = expectDerivatives(
          (alcove) => insideCorner(alcove, 'right', 600)[axis],
          parameters,
          `${seed} ${axis}`,
        );
        expect(moved).toBe(10); // back 4, right 6
      }
    }
  });

  it('stays finite where the walls do not meet', () => {
    const alcove = alcoveOf({ 'back.bowAcross': 0.2, 'left.square': 40, 'left.bowAcross': -0.3 });
    const { x, z } = insideCorner(alcove, 'left', 0);
    expect(Number.isFinite(x.value) && Number.isFinite(z.value)).toBe(true);
    expect(x.gradient!.every(Number.isFinite)).toBe(true);
  });
});

describe('distance', () => {
  it('is straight, in three directions', () => {
    const place = (x: number, y: number, z: number) => ({ x: constant(x), y: constant(y), z: constant(z) });
    expect(distance(place(1, 2, 3), place(3, 5, 9)).value).toBeCloseTo(7, 12); // 2, 3, 6
  });
});

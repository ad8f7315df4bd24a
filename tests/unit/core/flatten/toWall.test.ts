import { describe, expect, it } from 'vitest';
import { developMap, planeMap, toWall } from '../../../../src/core/flatten';
import { alcoveWith, skewedParameters } from '../skewedAlcove';

const REGION = { u: [-760, 760], v: [-740, 980] } as { u: [number, number]; v: [number, number] };

describe.each([
  ['plane', planeMap],
  ['developed', developMap],
])('toWall of a %s map', (_, map) => {
  it('undoes toSheet all over the panel, on walls far out of true', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const flat = map(alcoveWith(skewedParameters(seed)).back, REGION);
      for (const u of [-760, -200, 0, 333, 760]) {
        for (const v of [-740, 0, 500, 980]) {
          const [backU, backV] = toWall(flat, ...flat.toSheet(u, v));
          expect(Math.hypot(backU - u, backV - v)).toBeLessThan(1e-7);
        }
      }
    }
  });
});

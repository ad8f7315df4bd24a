import { describe, expect, it } from 'vitest';
import { heightOf, planeThrough } from '../../../../src/core/contact';
import { gridOver, type Region } from '../../../../src/core/flatten';
import { intoRoom, plumbPoints, restingPoints } from '../../../../src/core/seat/resting';
import { quadric } from '../heightField';

const REGION: Region = { u: [-700, 740], v: [-720, 980] };
const MIDDLE = { u: 20, v: 130 };
const HALF = { u: 720, v: 850 };
const k = 6e-6;

type Height = (u: number, v: number) => number;

/** Distance between a wall and the plane through the points that a rigid sheet rests on. */
function behindRigid(height: Height): Height {
  const plane = planeThrough(restingPoints(height, REGION));
  return (u, v) => heightOf(plane, u, v) - height(u, v);
}
const deepest = (height: Height): number =>
  Math.max(...gridOver(REGION, 24).map(([u, v]) => behindRigid(height)(u, v)));

describe('hollow behind a rigid sheet', () => {
  it('is none on a leaning, turned plane', () => {
    expect(deepest((u, v) => 3 + 0.02 * u - 0.01 * v)).toBeCloseTo(0, 9);
  });

  it('is deepest amid a hollow wall: k times half the height squared', () => {
    const hollow = (_: number, v: number): number => k * (v - MIDDLE.v) ** 2;
    expect(deepest(hollow)).toBeCloseTo(k * HALF.v ** 2, 6);
    expect(behindRigid(hollow)(300, MIDDLE.v)).toBeCloseTo(k * HALF.v ** 2, 6);
    expect(behindRigid(hollow)(300, REGION.v[1])).toBeCloseTo(0, 9);
  });

  it('is widest at the edges of a hump, on which the sheet rocks', () => {
    const hump = (_: number, v: number): number => -k * (v - MIDDLE.v) ** 2;
    const widest = k * HALF.v ** 2;
    expect(deepest(hump) / widest).toBeGreaterThan(1);
    expect(deepest(hump) / widest).toBeLessThan(1.01);
    expect(behindRigid(hump)(300, MIDDLE.v)).toBeLessThan(0.01 * widest);
    const dome = (u: number, v: number): number => -k * ((u - MIDDLE.u) ** 2 + (v - MIDDLE.v) ** 2);
    expect(deepest(dome) / (k * (HALF.u ** 2 + HALF.v ** 2))).toBeCloseTo(1, 1);
  });

  it('lets one corner of a twisted wall stand off by what it is out of the plane of the others', () => {
    const twisted = (u: number, v: number): number => k * (u - MIDDLE.u) * (v - MIDDLE.v);
    expect(deepest(twisted)).toBeCloseTo(4 * k * HALF.u * HALF.v, 6);
  });
});

describe('plumbPoints', () => {
  it('carry a plumb plane that the wall nowhere stands proud of, and touches', () => {
    const leaning = (u: number, v: number): number => 0.01 * v + 0.004 * u - k * (u - MIDDLE.u) ** 2;
    const [[u0, v0], [u1, v1]] = plumbPoints(leaning, REGION) as [[number, number], [number, number]];
    expect([v0, v1]).toEqual([980, 980]);
    const slope = (leaning(u1, v1) - leaning(u0, v0)) / (u1 - u0);
    const clear = gridOver(REGION, 24).map(([u, v]) => leaning(u0, v0) + slope * (u - u0) - leaning(u, v));
    expect(Math.min(...clear)).toBeCloseTo(0, 9);
  });
});

describe('intoRoom', () => {
  it('grows towards the room on every wall', () => {
    const wall = quadric({ q: 0.01 });
    expect(intoRoom(wall, 'back')(0, 100)).toBeCloseTo(1, 12);
    expect(intoRoom(wall, 'left')(0, 100)).toBeCloseTo(1, 12);
    expect(intoRoom(wall, 'right')(0, 100)).toBeCloseTo(-1, 12);
  });
});

import { describe, expect, it } from 'vitest';
import type { Region } from '../../../../src/core/flatten';
import { hollowAt, hollowBehindRigidSheet, intoRoom } from '../../../../src/core/panel/resting';
import { quadric } from '../heightField';

const REGION: Region = { u: [-700, 740], v: [-720, 980] };
const MIDDLE = { u: 20, v: 130 };
const HALF = { u: 720, v: 850 };
const k = 6e-6;

describe('hollow behind a rigid sheet', () => {
  it('is none on a leaning, turned plane', () => {
    expect(hollowBehindRigidSheet((u, v) => 3 + 0.02 * u - 0.01 * v, REGION)).toBeCloseTo(0, 9);
  });

  it('is deepest amid a hollow wall: k times half the height squared', () => {
    const hollow = (_: number, v: number): number => k * (v - MIDDLE.v) ** 2;
    expect(hollowBehindRigidSheet(hollow, REGION)).toBeCloseTo(k * HALF.v ** 2, 6);
    expect(hollowAt(hollow, REGION)(300, MIDDLE.v)).toBeCloseTo(k * HALF.v ** 2, 6);
    expect(hollowAt(hollow, REGION)(300, REGION.v[1])).toBeCloseTo(0, 9);
  });

  it('is widest at the edges of a hump, on which the sheet rocks', () => {
    const hump = (_: number, v: number): number => -k * (v - MIDDLE.v) ** 2;
    const widest = k * HALF.v ** 2;
    expect(hollowBehindRigidSheet(hump, REGION) / widest).toBeGreaterThan(1);
    expect(hollowBehindRigidSheet(hump, REGION) / widest).toBeLessThan(1.01);
    expect(hollowAt(hump, REGION)(300, MIDDLE.v)).toBeLessThan(0.01 * widest);
    const dome = (u: number, v: number): number => -k * ((u - MIDDLE.u) ** 2 + (v - MIDDLE.v) ** 2);
    expect(hollowBehindRigidSheet(dome, REGION) / (k * (HALF.u ** 2 + HALF.v ** 2))).toBeCloseTo(1, 1);
  });

  it('lets one corner of a twisted wall stand off by what it is out of the plane of the others', () => {
    const twisted = (u: number, v: number): number => k * (u - MIDDLE.u) * (v - MIDDLE.v);
    expect(hollowBehindRigidSheet(twisted, REGION)).toBeCloseTo(4 * k * HALF.u * HALF.v, 6);
  });

  it('never has the wall in front of the sheet', () => {
    const rough = (u: number, v: number): number => 4 * Math.sin(u / 130) * Math.cos(v / 170) + 0.01 * u;
    const behind = hollowAt(rough, REGION);
    for (let u = -700; u <= 740; u += 60)
      for (let v = -720; v <= 980; v += 50) expect(behind(u, v)).toBeGreaterThanOrEqual(0);
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

import { describe, expect, it } from 'vitest';
import { alcoveOf } from '../skewedAlcove';
import { diagnosed, diagnosisOf } from './diagnosing';

describe('rim', () => {
  it('is out of level along the back wall, higher at the right positive, and to the front, higher at the front positive', () => {
    const { rim } = diagnosisOf({ 'rim.levelAlong': 0.003, 'rim.levelAcross': -0.002 });
    expect(rim.outOfLevel).toMatchObject({
      along: expect.closeTo(3, 9),
      across: expect.closeTo(-2, 9),
      alongSd: 0,
      acrossSd: 0,
    });
  });

  it('is sampled from wall to wall and from the back to the apron', () => {
    const { rim } = diagnosisOf({ 'rim.levelAlong': 0.003 }, { rim: { width: 740 } });
    expect([rim.x[0], rim.x.at(-1), rim.z[0], rim.z.at(-1)]).toEqual([-760, 760, 0, 740]);
    expect(rim.value).toHaveLength(rim.z.length);
    expect(rim.value[3]![0]).toBeCloseTo(-740 - 0.003 * 760, 9);
    expect(rim.value[3]!.at(-1)).toBeCloseTo(-740 + 0.003 * 760, 9);
  });

  it('has standard deviations', () => {
    const { rim } = diagnosed(alcoveOf({}), {}, 1e-5);
    expect(rim.outOfLevel.alongSd).toBeCloseTo(1e-5 * 1000, 9); // bow along the back cancels between equal ends
    expect(rim.outOfLevel.acrossSd).toBeCloseTo(1e-5 * 1000 * Math.hypot(1, 760), 6);
    expect(rim.sd[0]![8]).toBeCloseTo(1e-5, 12);
  });
});

describe('front edges', () => {
  it('are sampled over the height drawn', () => {
    const { front } = diagnosisOf({ 'front.right.plumb': 0.01, 'front.left.position': 755 });
    expect([front.right.height[0], front.right.height.at(-1)]).toEqual([-740, 1130]);
    expect(front.right.value[0]).toBeCloseTo(760 - 7.4, 9);
    expect(front.right.value.at(-1)).toBeCloseTo(760 + 11.3, 9);
    expect(new Set(front.left.value)).toEqual(new Set([755]));
    expect(diagnosed(alcoveOf({}), {}, 0.01).front.left.sd[0]).toBeCloseTo(0.01 * Math.hypot(1, 740), 9);
  });
});

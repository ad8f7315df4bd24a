import { describe, expect, it } from 'vitest';
import { apronAt, apronLine, farthestOut } from '../../../../src/core/leg';
import { jobWith } from '../../../simulate';
import { alcoveOf } from '../skewedAlcove';

const box = alcoveOf({});
const heights = (points: { z: number; y: { value: number } }[]) => points.map(({ z, y }) => [z, y.value]);

describe('apronLine', () => {
  it("is plumb from the rim's edge to the floor where nothing else is known", () => {
    const job = jobWith([], { rim: { width: 750 }, levelAboveFloor: 1240 });
    expect(heights(apronLine(box, job, 'left', [2, 8]))).toEqual([
      [750, -740],
      [750, -1240],
    ]);
  });

  it("goes from the end of the rim's profile down the points of the apron", () => {
    const job = jobWith([], {
      rim: {
        width: 750,
        profile: [
          [0, 0],
          [20, -12],
        ],
        apron: [
          [4, -30],
          [-15, -400],
        ],
      },
      levelAboveFloor: 1240,
    });
    const line = apronLine(box, job, 'right', [2, 8]);
    expect(heights(line)).toEqual([
      [750, -752],
      [754, -770],
      [735, -1140],
      [735, -1240],
    ]);
    expect(farthestOut(line)).toBe(754);
    expect(apronAt(line, -700)).toBe(750);
    expect(apronAt(line, -761)).toBeCloseTo(752, 9);
    expect(apronAt(line, -955)).toBeCloseTo(744.5, 9);
    expect(apronAt(line, -2000)).toBe(735);
  });

  it('stops at the floor', () => {
    const job = jobWith([], { rim: { width: 750, apron: [[-20, -1000]] }, levelAboveFloor: 1240 });
    expect(heights(apronLine(box, job, 'right', [2, 8]))).toEqual([
      [750, -740],
      [740, -1240],
    ]);
  });

  it("leaves out points above the rim's edge", () => {
    const job = jobWith([], {
      rim: {
        width: 750,
        profile: [
          [0, 0],
          [20, -12],
        ],
        apron: [
          [3, -5],
          [1, -40],
        ],
      },
      levelAboveFloor: 1240,
    });
    expect(heights(apronLine(box, job, 'right', [2, 8]))).toEqual([
      [750, -752],
      [751, -780],
      [751, -1240],
    ]);
  });

  it('stands where the rim stands at its side', () => {
    const tilted = alcoveOf({ 'rim.levelAlong': 0.01 });
    const job = jobWith([], { rim: { width: 750 }, levelAboveFloor: 1240 });
    expect(apronLine(tilted, job, 'right', [2, 8])[0]!.y.value).toBeCloseTo(-740 + 7.58, 9);
    expect(apronLine(tilted, job, 'left', [2, 8])[0]!.y.value).toBeCloseTo(-740 - 7.52, 9);
  });
});

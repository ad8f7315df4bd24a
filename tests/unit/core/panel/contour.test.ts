import { describe, expect, it } from 'vitest';
import { constant } from '../../../../src/core/dual';
import { contourKinks, contourRise } from '../../../../src/core/panel';
import { rimOf } from './fitting';

const rise = (profile: [number, number][], z: number, width = 760): number =>
  contourRise(rimOf(profile, width), constant(z)).value;

describe('contourRise', () => {
  const profile: [number, number][] = [
    [0, 0],
    [10, -1],
    [30, -9],
  ];

  it('runs straight between the points, the last of which lies at the apron', () => {
    expect([700, 730, 735, 740, 750, 760].map((z) => rise(profile, z))).toEqual([0, 0, -0.5, -1, -5, -9]);
    expect([770, 785, 800].map((z) => rise(profile, z, 800))).toEqual(
      [0, -3, -9].map((each) => expect.closeTo(each, 12)),
    );
  });

  it('is level before the first point and past the apron', () => {
    expect(rise(profile, -50)).toBe(0);
    expect(rise(profile, 900)).toBe(-9);
    expect(
      rise(
        [
          [0, -2],
          [10, -5],
        ],
        0,
      ),
    ).toBe(-2);
  });

  it('is none without points, and one height with one', () => {
    expect(rise([], 755)).toBe(0);
    expect([100, 760].map((z) => rise([[5, -3]], z))).toEqual([-3, -3]);
  });

  it('falls with its slope where z moves', () => {
    const z = { value: 755, gradient: Float64Array.of(2) };
    expect(contourRise(rimOf(profile), z).gradient![0]).toBeCloseTo(2 * -0.4, 12);
  });
});

describe('contourKinks', () => {
  it('are the places of the points', () => {
    expect(
      contourKinks(
        rimOf([
          [0, 0],
          [10, -1],
          [30, -9],
        ]),
      ),
    ).toEqual([730, 740, 760]);
    expect(contourKinks(rimOf([]))).toEqual([]);
  });
});

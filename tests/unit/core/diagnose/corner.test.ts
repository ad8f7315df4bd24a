import { describe, expect, it } from 'vitest';
import { alcoveOf } from '../skewedAlcove';
import { diagnosed, diagnosisOf } from './diagnosing';

const degree = Math.PI / 180;

describe('corners', () => {
  it('measure 89° where a side wall closes by one', () => {
    const { corners } = diagnosisOf({ 'left.square': Math.tan(degree), 'right.square': Math.tan(degree) });
    expect(corners.left.angle.map(({ value }) => value)).toEqual([89, 89, 89].map((each) => expect.closeTo(each, 9)));
    expect(corners.right.angle.map(({ value }) => value)).toEqual([91, 91, 91].map((each) => expect.closeTo(each, 9)));
  });

  it('are given at the rim, the level line and the top', () => {
    expect(diagnosisOf({}).corners.left.angle.map(({ height }) => height)).toEqual([-740, 0, 980]);
    expect(diagnosisOf({}, { fit: { top: -100 } }).corners.left.angle.map(({ height }) => height)).toEqual([
      -740, -100,
    ]);
    expect(diagnosisOf({ 'rim.height': 20 }).corners.left.angle.map(({ height }) => height)).toEqual([20, 980]);
  });

  it('open where the wall twists away going up', () => {
    const [low, , high] = diagnosisOf({ 'left.twist': -1e-5 }).corners.left.angle;
    expect(low!.value).toBeCloseTo(90 - Math.atan(1e-5 * 740) / degree, 9);
    expect(high!.value).toBeCloseTo(90 + Math.atan(1e-5 * 980) / degree, 9);
  });

  it("have the standard deviation of their walls' slopes, in degrees", () => {
    const { corners } = diagnosed(alcoveOf({}), {}, 1e-4);
    // at the level line: the side's slope along z, and the back's 2 kx x at x = −760
    expect(corners.left.angle[1]!.sd).toBeCloseTo((1e-4 * Math.hypot(1, 2 * 760)) / degree, 6);
  });
});

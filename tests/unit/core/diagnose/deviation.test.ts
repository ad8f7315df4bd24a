import { describe, expect, it } from 'vitest';
import { alcoveOf } from '../skewedAlcove';
import { diagnosed, diagnosisOf } from './diagnosing';

const largest = (grid: number[][]) => Math.max(...grid.flat().map(Math.abs));

describe('deviation', () => {
  it('of a wall that only leans is its lean off plumb, and nothing off flat', () => {
    const { plumb, flat, height } = diagnosisOf({ 'back.plumb': 0.01 }).walls.back.deviation;
    const middle = (height[0]! + height.at(-1)!) / 2;
    plumb.value.forEach((row, i) => {
      for (const value of row) expect(value).toBeCloseTo(0.01 * (height[i]! - middle), 9);
    });
    expect(largest(flat.value)).toBeLessThan(1e-9);
  });

  it('leaves out where a side wall stands and how far it is out of square', () => {
    const { plumb } = diagnosisOf({ 'left.position': -900, 'left.square': 0.02 }).walls.left.deviation;
    expect(largest(plumb.value)).toBeLessThan(1e-9);
  });

  it('is towards the room positive on both sides', () => {
    const { left, right } = diagnosisOf({ 'left.plumb': 0.01, 'right.plumb': -0.01 }).walls;
    expect(left.deviation.plumb.value.at(-1)![0]).toBeGreaterThan(8);
    expect(right.deviation.plumb.value.at(-1)![0]).toBeCloseTo(left.deviation.plumb.value.at(-1)![0]!, 9);
  });

  it('off flat is least squares: no plane is left in it', () => {
    const { flat, at, height } = diagnosisOf({ 'back.bowUp': 2e-6, 'back.twist': 3e-6, 'back.plumb': 0.004 }).walls.back
      .deviation;
    const moment = (weight: (a: number, h: number) => number) =>
      flat.value.flatMap((row, i) => row.map((value, j) => value * weight(at[j]!, height[i]!))).reduce((a, b) => a + b);
    expect(largest(flat.value)).toBeGreaterThan(1);
    expect(moment(() => 1)).toBeCloseTo(0, 6);
    expect(moment((a) => a / 1000)).toBeCloseTo(0, 6);
    expect(moment((_, h) => h / 1000)).toBeCloseTo(0, 6);
  });

  it("carries the ± of the shape alone, not of the wall's position", () => {
    // every parameter known to 1e-4: of a side wall off flat only bow and twist are left, of 1e-4 per mm² each
    const { flat, at, height } = diagnosed(alcoveOf({}), {}, 1e-4).walls.left.deviation;
    const mean = (values: number[]) => values.reduce((a, b) => a + b) / values.length;
    const [a0, h0] = [mean(at), mean(height)];
    const [i, j] = [2, 5];
    const twist = (at[j]! - a0) * (height[i]! - h0);
    const curve = (values: number[], k: number) => {
      const middle = mean(values);
      const off = values.map((value) => value - middle);
      return off[k]! ** 2 - mean(off.map((each) => each ** 2));
    };
    expect(flat.sd[i]![j]).toBeCloseTo(1e-4 * Math.hypot(twist, curve(at, j), curve(height, i)), 6);
  });
});

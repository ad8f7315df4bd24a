import { describe, expect, it } from 'vitest';
import { takenValue } from '../../../../src/core/survey';

describe('takenValue', () => {
  it('is the value itself where it was taken once', () => {
    expect(takenValue({ value: 750.5 })).toEqual({ mean: 750.5, times: 1, spread: 0 });
  });

  it('is the mean of value and repeats, and tells how far they lie apart', () => {
    const { mean, times, spread } = takenValue({ value: 750, repeats: [751, 752.5] });
    expect(mean).toBeCloseTo(2253.5 / 3, 12);
    expect([times, spread]).toEqual([3, 2.5]);
  });
});

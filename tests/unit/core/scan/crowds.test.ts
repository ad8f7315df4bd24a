import { describe, expect, it } from 'vitest';
import { crowdsOf } from '../../../../src/core/scan/crowds';

describe('crowdsOf', () => {
  it('counts a step with its two neighbours, below zero too', () => {
    const { steps, crowd } = crowdsOf([-1, 1, 9, 10, 19, 45], 10);
    expect([...steps].sort((a, b) => a - b)).toEqual([-1, 0, 1, 4]);
    expect([-2, -1, 0, 1, 2, 3, 4].map(crowd)).toEqual([1, 3, 5, 4, 2, 1, 1]);
  });
});

import { describe, expect, it } from 'vitest';
import { patternsWithin } from '../../../../../src/core/layout/stock/allPatterns';

const STOCK = [{ length: 10, cost: 1 }];
const DEMANDS = [
  { length: 3, count: 2 },
  { length: 4, count: 2 },
];

describe('patternsWithin', () => {
  it('lists every pattern, none twice, where the slack is wide', () => {
    const patterns = patternsWithin(STOCK, DEMANDS, [0.3, 0.4], [0], 5, 100)!;
    expect(patterns.map(({ counts }) => counts.join()).sort()).toEqual(['0,1', '0,2', '1,0', '1,1', '2,0', '2,1']);
  });

  it('keeps those whose price comes within the slack of the cost', () => {
    const patterns = patternsWithin(STOCK, DEMANDS, [0.3, 0.4], [0], 0.2, 100)!;
    expect(patterns.map(({ counts }) => counts.join()).sort()).toEqual(['0,2', '2,1']);
  });

  it('gives up beyond the limit', () => {
    expect(patternsWithin(STOCK, DEMANDS, [0.3, 0.4], [0], 5, 5)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/least-squares';
import { chiSquareTail, groupTest } from '../../../../src/core/reliability';
import { randomFrom } from '../../../simulate';
import { straightLine } from '../least-squares/straightLine';

function solved(points: (readonly [number, number])[]) {
  const outcome = solveLeastSquares(straightLine(points));
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
}

const noisy = (seed: number, count: number, sdOf: (i: number) => number) => {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, i) => [i, 2 + 0.5 * i + random.normal(0, sdOf(i))] as const);
};

describe('groupTest', () => {
  it('over all rows is the global test with its degrees of freedom', () => {
    const solution = solved(noisy(1, 9, () => 1));
    const rows = Array.from(solution.misfit.keys());
    const { redundancy, factor, probability } = groupTest(solution, rows);
    expect(redundancy).toBeCloseTo(7, 9);
    expect(factor).toBeCloseTo(solution.s0!, 9);
    expect(probability).toBeCloseTo(chiSquareTail(7 * solution.s0! ** 2, 7), 9);
  });

  it('of a part is true to its probability', () => {
    let below = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const { probability } = groupTest(solved(noisy(seed, 10, () => 1)), [0, 1, 2, 3]);
      if (probability < 0.1) below++;
    }
    expect(below).toBeGreaterThan(70);
    expect(below).toBeLessThan(130);
  });

  it('finds the group whose sigmas are three times too small', () => {
    const rough = (i: number): number => (i % 2 === 0 ? 3 : 1);
    const factors = [0, 1].map((odd) => {
      const squares = Array.from({ length: 40 }, (_, seed) => {
        const solution = solved(noisy(seed + 1, 30, rough));
        return groupTest(
          solution,
          Array.from(solution.misfit.keys()).filter((row) => row % 2 === odd),
        ).factor!;
      });
      return squares.reduce((sum, each) => sum + each, 0) / squares.length;
    });
    expect(factors[0]).toBeGreaterThan(2.6);
    expect(factors[0]).toBeLessThan(3.2);
    expect(factors[1]).toBeLessThan(1.4);
  });

  it('says nothing of rows that nothing checks', () => {
    const solution = solved([
      [0, 1],
      [1, 2],
    ]);
    expect(groupTest(solution, [0, 1])).toMatchObject({ factor: null, probability: 1 });
  });
});

import { describe, expect, it } from 'vitest';
import { type LeastSquaresProblem, solveLeastSquares } from '../../../../src/core/least-squares';
import { normalCritical, type SearchOptions, searchBlunders, tauCritical } from '../../../../src/core/reliability';
import { randomFrom } from '../../../simulate';
import { straightLine } from '../least-squares/straightLine';

const BY_W: SearchOptions = { test: 'w', critical: (tests) => normalCritical(0.01 / tests) };
const BY_TAU: SearchOptions = { test: 'tau', critical: (tests, dof) => tauCritical(0.01 / tests, dof) };

function search(problem: LeastSquaresProblem, options = BY_W) {
  const outcome = solveLeastSquares(problem);
  if (!outcome.ok) throw new Error(outcome.reason);
  return searchBlunders(problem, outcome.solution, options);
}

/** A line read twelve times, with errors of `sd` and some readings wrong by so much. */
function line(seed: number, wrong: Record<number, number> = {}, sd = 1) {
  const random = randomFrom(seed);
  const points = Array.from(
    { length: 12 },
    (_, i) => [i, 3 - 0.2 * i + random.normal(0, sd) + (wrong[i] ?? 0)] as const,
  );
  return straightLine(points);
}

describe('searchBlunders', () => {
  it('names nothing among readings without a blunder', () => {
    let alarms = 0;
    for (let seed = 1; seed <= 400; seed++) alarms += Number(search(line(seed)).blunders.length > 0);
    // 1 % allowed: 400 surveys give 4 on average, more than 12 once in two thousand times
    expect(alarms).toBeLessThanOrEqual(12);
  });

  it('names one blunder, how large it is and how sure that is', () => {
    const { blunders, kept, cleaned } = search(line(5, { 7: 15 }));
    expect(blunders).toHaveLength(1);
    const [{ row, statistic, error, errorSd, alternatives }] = blunders as [(typeof blunders)[number]];
    expect(row).toBe(7);
    expect(Math.abs(error - 15)).toBeLessThan(3 * errorSd);
    expect(statistic).toBeCloseTo(Math.abs(error) / errorSd, 6);
    expect(alternatives).toEqual([]);
    expect(kept).toEqual([0, 1, 2, 3, 4, 5, 6, 8, 9, 10, 11]);
    expect(cleaned.dof).toBe(9);
  });

  it('names both of two that hide each other at one end', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const { blunders } = search(line(seed, { 10: 14, 11: 15 }));
      expect(
        blunders.map(({ row }) => row).sort((a, b) => a - b),
        `seed ${seed}`,
      ).toEqual([10, 11]);
    }
  });

  it('puts right a first guess that a second blunder misled', () => {
    // With both in, the largest statistic is that of row 9, which is right.
    const points = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((x) => [x, x === 0 ? 12 : x === 1 ? 12 : 0] as const);
    const { blunders } = search(straightLine(points));
    expect(blunders.map(({ row }) => row).sort()).toEqual([0, 1]);
  });

  it('says which others it cannot be told from', () => {
    const { blunders } = search(
      straightLine([
        [0, 0],
        [0, 0.1],
        [5, 0],
        [5, 20],
      ]),
    );
    expect(blunders).toHaveLength(1);
    expect([blunders[0]!.row, ...blunders[0]!.alternatives].sort()).toEqual([2, 3]);
  });

  it('keeps to the rows that may be wrong', () => {
    const { blunders } = search(line(5, { 7: 15 }), { ...BY_W, suspectable: (row) => row !== 7 });
    expect(blunders.every(({ row }) => row !== 7)).toBe(true);
  });

  it('by tau leaves alone what is rough all over, and finds one reading that is not', () => {
    let alarms = 0;
    for (let seed = 1; seed <= 200; seed++) alarms += Number(search(line(seed, {}, 20), BY_TAU).blunders.length > 0);
    expect(alarms).toBeLessThanOrEqual(8);
    expect(search(line(3, {}, 20)).blunders.length).toBeGreaterThan(0);
    expect(search(line(6, { 4: 300 }, 20), BY_TAU).blunders.map(({ row }) => row)).toEqual([4]);
  });

  it('by tau names none where no row tells the standard deviation of unit weight', () => {
    const options = { ...BY_TAU, scaled: () => false };
    expect(search(line(6, { 4: 300 }, 20), options).blunders).toEqual([]);
  });

  it('takes out no more rows than it is allowed', () => {
    const { blunders } = search(line(8, { 1: 40, 4: -30, 8: 50, 10: 60 }), { ...BY_W, atMost: 2 });
    expect(blunders).toHaveLength(2);
  });
});

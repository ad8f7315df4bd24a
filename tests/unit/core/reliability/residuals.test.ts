import { describe, expect, it } from 'vitest';
import { solveLeastSquares, withoutRows } from '../../../../src/core/least-squares';
import { given, residualCofactor, residualCorrelation } from '../../../../src/core/reliability';
import { straightLine } from '../least-squares/straightLine';

const POINTS = [
  [0, 1],
  [1, 2.4],
  [2, 2.7],
  [3, 9],
  [4, 5.2],
  [5, 5.9],
] as const;
const problem = straightLine(POINTS);
const solved = (left: number[] = []) => {
  const outcome = solveLeastSquares(withoutRows(problem, new Set(left)));
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
};
const solution = solved();

describe('given', () => {
  it('nothing wrong, is the adjustment itself', () => {
    const { misfit, redundancy, gain } = given(solution, [])!;
    misfit.forEach((each, i) => {
      expect(each).toBeCloseTo(solution.misfit[i]!, 12);
      expect(redundancy[i]).toBeCloseTo(solution.redundancy[i]!, 12);
      expect(gain[i]).toBeCloseTo(each ** 2 / redundancy[i]!, 12);
    });
  });

  it.each([[[3]], [[0, 3]], [[1, 4, 5]]])('rows %j wrong, is the adjustment without them', (wrong) => {
    const { misfit, redundancy, errors, errorCovariance } = given(solution, wrong)!;
    const without = solved(wrong);
    const kept = POINTS.map((_, i) => i).filter((i) => !wrong.includes(i));
    kept.forEach((row, i) => {
      expect(misfit[row]).toBeCloseTo(without.misfit[i]!, 10);
      expect(redundancy[row]).toBeCloseTo(without.redundancy[i]!, 10);
    });
    wrong.forEach((row, k) => {
      const [x, y] = POINTS[row]!;
      const fits = without.x[0]! + without.x[1]! * x;
      const spread = without.cofactors;
      const variance = spread.get(0, 0) + 2 * x * spread.get(0, 1) + x * x * spread.get(1, 1);
      expect(errors[k]!.value).toBeCloseTo(y - fits, 10);
      expect(errors[k]!.sd).toBeCloseTo(Math.sqrt(1 + variance), 10);
      expect(errorCovariance[k]![k]).toBeCloseTo(1 + variance, 10);
    });
  });

  it('tells each gain as the drop in the sum of squares', () => {
    const squares = ({ misfit }: { misfit: Float64Array }) => misfit.reduce((sum, each) => sum + each * each, 0);
    const { gain } = given(solution, [3])!;
    expect(gain[1]).toBeCloseTo(squares(solved([3])) - squares(solved([1, 3])), 10);
  });

  it('has no answer where the rest does not tell the errors', () => {
    expect(given(solution, [0, 1, 2, 3, 4])).toBeNull();
  });
});

describe('residual cofactors and correlations', () => {
  it('have the redundancy numbers on the diagonal', () => {
    solution.redundancy.forEach((each, i) => {
      expect(residualCofactor(solution, i, i)).toBeCloseTo(each, 12);
      expect(residualCorrelation(solution, i, i)).toBeCloseTo(1, 12);
    });
  });

  it('are ±1 between all rows where only one is redundant', () => {
    const three = solved([0, 1, 2]);
    expect(Math.abs(residualCorrelation(three, 0, 1))).toBeCloseTo(1, 9);
    expect(Math.abs(residualCorrelation(three, 0, 2))).toBeCloseTo(1, 9);
  });
});

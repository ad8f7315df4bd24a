import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LeastSquaresProblem,
  residualsAt,
  solveLeastSquares,
  withoutRows,
} from '../../../../src/core/least-squares';
import { straightLine } from './straightLine';

const solved = (problem: LeastSquaresProblem) => {
  const outcome = solveLeastSquares(problem);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
};

describe('solveLeastSquares', () => {
  it('fits a straight line: by hand, y = 1.13 + 0.88 x through (0, 1), (1, 2.1), (2, 3.1), (3, 3.6)', () => {
    const { x, dof, s0, cofactors, redundancy } = solved(
      straightLine([
        [0, 1],
        [1, 2.1],
        [2, 3.1],
        [3, 3.6],
      ]),
    );
    expect(x[0]).toBeCloseTo(1.13, 10);
    expect(x[1]).toBeCloseTo(0.88, 10);
    expect(dof).toBe(2);
    expect(s0).toBeCloseTo(Math.sqrt(0.098 / 2), 10);
    // (JᵀJ)⁻¹ of x = 0 … 3
    expect(cofactors.to2DArray().flat()).toEqual([0.7, -0.3, -0.3, 0.2].map((each) => expect.closeTo(each, 10)));
    expect(Array.from(redundancy)).toEqual([0.3, 0.7, 0.7, 0.3].map((each) => expect.closeTo(each, 10)));
  });

  it('refuses what the rows leave open, with the direction', () => {
    const outcome = solveLeastSquares({
      start: [0, 0, 0],
      evaluate: ([a, b]) => ({
        misfit: Float64Array.of(5 - a! - b!, 1 - a! - b!),
        jacobian: [Float64Array.of(1, 1, 0), Float64Array.of(1, 1, 0)],
      }),
    });
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.nullSpace).toHaveLength(2);
    for (const direction of outcome.nullSpace) {
      expect(Math.hypot(...direction)).toBeCloseTo(1, 12);
      expect(direction[0]! + direction[1]!).toBeCloseTo(0, 12);
    }
  });

  it('refuses a start that predicts nothing finite', () => {
    const outcome = solveLeastSquares({
      start: [0],
      evaluate: () => ({ misfit: Float64Array.of(Number.NaN), jacobian: [Float64Array.of(1)] }),
    });
    expect(outcome).toMatchObject({ ok: false, reason: 'the starting values give no finite prediction' });
  });

  it('finds a point from distances, from starts where full steps fail', () => {
    const beacons = [
      [0, 0],
      [10, 0],
      [0, 10],
      [10, 12],
    ];
    const truth = [3, 4];
    for (const start of [
      [60, -80],
      [-45, 70],
      [300, 400],
    ]) {
      const { x, converged } = solved({
        start,
        evaluate: ([px, py]) => {
          const legs = beacons.map(([bx, by]) => [px! - bx!, py! - by!]);
          return {
            misfit: Float64Array.from(
              beacons,
              ([bx, by], i) => Math.hypot(truth[0]! - bx!, truth[1]! - by!) - Math.hypot(...legs[i]!),
            ),
            jacobian: legs.map(([dx, dy]) => Float64Array.of(dx!, dy!).map((each) => each / Math.hypot(dx!, dy!))),
          };
        },
      });
      expect(converged).toBe(true);
      expect(x[0]).toBeCloseTo(3, 8);
      expect(x[1]).toBeCloseTo(4, 8);
    }
  });

  it('has redundancy numbers between 0 and 1 that add up to its degrees of freedom', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })), {
          minLength: 2,
          maxLength: 12,
        }),
        (points) => {
          const { dof, redundancy } = solved(straightLine([[-2, 0], ...points, [2, 1]]));
          expect(redundancy.reduce((sum, each) => sum + each, 0)).toBeCloseTo(dof, 9);
          for (const each of redundancy) expect(each >= 0 && each <= 1 + 1e-12).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('withoutRows', () => {
  it('is the problem of the other rows', () => {
    const problem = straightLine([
      [0, 1],
      [1, 90],
      [2, 3],
      [3, 4],
    ]);
    const { x, dof } = solved(withoutRows(problem, new Set([1])));
    expect(dof).toBe(1);
    expect(Array.from(x)).toEqual([expect.closeTo(1, 10), expect.closeTo(1, 10)]);
  });
});

describe('residualsAt', () => {
  it('of a linear problem are those of its solution, wherever it is linearised', () => {
    const problem = straightLine([
      [0, 1],
      [1, 2.5],
      [2, 2.8],
      [3, 4.4],
    ]);
    const { misfit, orthogonal } = residualsAt(problem, Float64Array.of(7, -3));
    const solution = solved(problem);
    misfit.forEach((each, i) => {
      expect(each).toBeCloseTo(solution.misfit[i]!, 10);
      expect(1 - Math.hypot(...orthogonal[i]!) ** 2).toBeCloseTo(solution.redundancy[i]!, 10);
    });
  });
});

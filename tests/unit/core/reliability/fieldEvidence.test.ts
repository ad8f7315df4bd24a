import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/least-squares';
import { fieldEvidence } from '../../../../src/core/reliability';
import { randomFrom } from '../../../simulate';
import { straightLine } from '../least-squares/straightLine';

const COUNT = 12;
/** Three bumps along the line. */
const COLUMNS = Array.from({ length: COUNT }, (_, i) =>
  Float64Array.from([2, 5.5, 9], (centre) => Math.exp(-(((i - centre) / 1.5) ** 2))),
);

function solved(seed: number, bump: number) {
  const random = randomFrom(seed);
  const points = COLUMNS.map((column, i) => [i, random.normal(0, 1) + bump * column[1]!] as const);
  const outcome = solveLeastSquares(straightLine(points));
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
}

describe('fieldEvidence', () => {
  it('is the ratio of the two normal densities, worked out by brute force', () => {
    const solution = solved(4, 3);
    const size = 1.7;
    const { twiceLog } = fieldEvidence(solution, COLUMNS, [size]);
    // Density ratio of the residuals' projection: uᵀM⁻¹u − ln det M with every matrix written out.
    const p = solution.orthogonal.map((a, i) =>
      solution.orthogonal.map((b, j) => (i === j ? 1 : 0) - a.reduce((sum, each, k) => sum + each * b[k]!, 0)),
    );
    const m = [0, 1, 2].map((a) =>
      [0, 1, 2].map((b) => {
        let entry = a === b ? 1 : 0;
        for (let i = 0; i < COUNT; i++)
          for (let j = 0; j < COUNT; j++) entry += size ** 2 * COLUMNS[i]![a]! * p[i]![j]! * COLUMNS[j]![b]!;
        return entry;
      }),
    );
    const u = [0, 1, 2].map(
      (a) => size * COLUMNS.reduce((sum, column, i) => sum + column[a]! * solution.misfit[i]!, 0),
    );
    const det = determinant(m);
    const quadratic = [0, 1, 2].reduce(
      (sum, a) =>
        sum + (u[a]! * determinant(m.map((line, i) => line.map((each, j) => (j === a ? u[i]! : each))))) / det,
      0,
    );
    expect(twiceLog).toBeCloseTo(quadratic - Math.log(det), 9);
  });

  it('speaks for a bump that is there, and takes the size near it', () => {
    const { twiceLog, size } = fieldEvidence(solved(2, 12), COLUMNS, [0.3, 3, 10]);
    expect(twiceLog).toBeGreaterThan(2 * Math.log(1000));
    expect(size).toBeGreaterThan(0.3);
  });

  it('exceeds 100 to 1 without a bump no more than once in a hundred times', () => {
    let over = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      over += Number(fieldEvidence(solved(seed, 0), COLUMNS, [0.5, 1, 2]).twiceLog > 2 * Math.log(100));
    }
    expect(over).toBeLessThanOrEqual(20);
  });
});

function determinant(matrix: number[][]): number {
  const [a, b, c, d, e, f, g, h, i] = matrix.flat() as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

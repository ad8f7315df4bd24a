import { describe, expect, it } from 'vitest';
import { cholesky, solveLower, solveLowerTransposed, whitenedRows } from '../../../../src/core/least-squares';
import { randomFrom } from '../../../simulate';

const random = randomFrom(8);
const rowsOf = (m: number, n: number) =>
  Array.from({ length: m }, () => Float64Array.from({ length: n }, (_, j) => random.normal(0, 10 ** (j - 2))));

function normals(rows: Float64Array[], n: number): Float64Array {
  const normal = new Float64Array(n * n);
  for (const row of rows)
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) normal[i * n + j]! += row[i]! * row[j]!;
  return normal;
}

describe('cholesky', () => {
  it('solves positive definite equations', () => {
    const n = 5;
    const normal = normals(rowsOf(9, n), n);
    const truth = Float64Array.from([1, -2, 3, 0.5, 4]);
    const right = Float64Array.from(truth, (_, i) => truth.reduce((sum, x, j) => sum + normal[i * n + j]! * x, 0));
    const lower = cholesky(normal.slice(), n)!;
    const x = solveLowerTransposed(lower, n, solveLower(lower, n, right.slice()));
    x.forEach((each, i) => {
      expect(each).toBeCloseTo(truth[i]!, 6);
    });
  });

  it('gives null for a matrix that is not', () => {
    expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBe(null);
  });
});

describe('whitenedRows', () => {
  it('keeps the equations of whatever rank, with as many rows as there is rank', () => {
    for (const [m, rank] of [
      [12, 5],
      [3, 3],
    ] as const) {
      const n = 5;
      const source = rowsOf(m, n);
      const normal = normals(source, n);
      const right = new Float64Array(n);
      for (const row of source) for (let i = 0; i < n; i++) right[i]! += row[i]! * 0.7;
      const { rows, target } = whitenedRows(normal, right, n);
      expect(rows.length).toBe(rank);
      const again = normals(rows, n);
      for (let i = 0; i < n; i++) {
        const back = rows.reduce((sum, row, k) => sum + row[i]! * target[k]!, 0);
        const size = Math.sqrt(normal[i * n + i]!);
        expect(Math.abs(back - right[i]!) / size).toBeLessThan(1e-6);
        for (let j = 0; j < n; j++) {
          expect(
            Math.abs(again[i * n + j]! - normal[i * n + j]!) / (size * Math.sqrt(normal[j * n + j]!)),
          ).toBeLessThan(1e-9);
        }
      }
    }
  });
});

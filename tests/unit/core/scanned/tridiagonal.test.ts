import { expect, it } from 'vitest';
import { cholesky, solveLower, solveLowerTransposed } from '../../../../src/core/least-squares';
import { lehmer } from '../../../../src/core/scan/sample';
import { shifted, tridiagonal } from '../../../../src/core/scanned/tridiagonal';

/** G Gᵀ of a q × rank matrix at random, and a vector. */
function drawn(q: number, rank: number, seed: number): { s: Float64Array; v: Float64Array } {
  const random = lehmer(seed);
  const g = Array.from({ length: q * rank }, () => random() - 0.5);
  const s = Float64Array.from({ length: q * q }, (_, at) => {
    const [i, j] = [Math.floor(at / q), at % q];
    let sum = 0;
    for (let k = 0; k < rank; k++) sum += g[i * rank + k]! * g[j * rank + k]!;
    return sum;
  });
  return { s, v: Float64Array.from({ length: q }, () => random() - 0.5) };
}

it.each([
  [1, 1],
  [2, 2],
  [3, 1],
  [12, 12],
  [40, 25],
])('gives for S + λ I of %i rows, rank %i, what the Cholesky factor gives', (q, rank) => {
  for (const lambda of [1e-3, 0.4, 30]) {
    const { s, v } = drawn(q, rank, q + rank);
    const m = s.slice();
    for (let k = 0; k < q; k++) m[k * q + k]! += lambda;
    const lower = cholesky(m, q)!;
    const half = solveLower(lower, q, v.slice());
    const whole = solveLowerTransposed(lower, q, half.slice());
    let trace = 0;
    for (let k = 0; k < q; k++) {
      const one = new Float64Array(q);
      one[k] = 1;
      trace += solveLower(lower, q, one).reduce((sum, each) => sum + each * each, 0);
    }
    const expected = {
      logDeterminant: Array.from({ length: q }, (_, k) => 2 * Math.log(lower[k * q + k]!)).reduce((a, b) => a + b),
      inverseTrace: trace,
      explained: half.reduce((sum, each) => sum + each * each, 0),
      squares: whole.reduce((sum, each) => sum + each * each, 0),
    };
    const made = shifted(tridiagonal(s, v, q), lambda)!;
    for (const key of Object.keys(expected) as (keyof typeof expected)[]) {
      expect(Math.abs(made[key] - expected[key]), key).toBeLessThan(1e-9 * (1 + Math.abs(expected[key])));
    }
  }
});

it('tells that S + λ I is not positive definite', () => {
  expect(shifted(tridiagonal(Float64Array.of(1, 2, 2, 1), Float64Array.of(1, 1), 2), 0.5)).toBeNull();
});

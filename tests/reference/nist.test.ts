// Certified values: NIST/ITL Statistical Reference Datasets, linear least squares; see `source` in each data file.
import { describe, expect, it } from 'vitest';
import { type LeastSquaresProblem, solveLeastSquares } from '../../src/core/least-squares';
import filip from './data/nist_filip.json';
import longley from './data/nist_longley.json';
import norris from './data/nist_norris.json';
import wampler1 from './data/nist_wampler1.json';
import wampler2 from './data/nist_wampler2.json';
import wampler3 from './data/nist_wampler3.json';
import wampler4 from './data/nist_wampler4.json';
import wampler5 from './data/nist_wampler5.json';

interface DataSet {
  data: number[][];
  certified: { beta: number[]; se: number[]; rsd: number; df: number };
}

const polynomial =
  (degree: number) =>
  ([, x]: number[]) =>
    Array.from({ length: degree + 1 }, (_, k) => x! ** k);
const linear = ([, ...x]: number[]) => [1, ...x];

/** The regression as the adjustment sees one: unit weights, start at zero. */
function fit({ data }: DataSet, terms: (row: number[]) => number[]) {
  const outcome = solveLeastSquares(regression(data, terms));
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
}

/** Digits that agree, as NIST counts them: −log10 of the relative error. */
const agreement = (value: number, certified: number): number =>
  certified === 0 ? -Math.log10(Math.abs(value) || 1e-16) : -Math.log10(Math.abs(value / certified - 1) || 1e-16);

describe.each<[string, DataSet, (row: number[]) => number[], number]>([
  ['Norris', norris, linear, 11],
  ['Longley', longley, linear, 9],
  ['Wampler1', wampler1, polynomial(5), 8],
  ['Wampler2', wampler2, polynomial(5), 9],
  ['Wampler3', wampler3, polynomial(5), 8],
  ['Wampler4', wampler4, polynomial(5), 7],
  ['Wampler5', wampler5, polynomial(5), 5],
  ['Filip', filip, polynomial(10), 7],
])('%s', (_, set, terms, digits) => {
  const { x, cofactors, s0, dof, redundancy, converged } = fit(set, terms);
  const { beta, se, rsd, df } = set.certified;

  it(`has its coefficients to ${digits} digits`, () => {
    expect(converged).toBe(true);
    beta.forEach((value, j) => expect(agreement(x[j]!, value)).toBeGreaterThan(digits));
  });

  it('has its standard errors and residual standard deviation', () => {
    expect(dof).toBe(df);
    if (rsd === 0) {
      expect(s0).toBeLessThan(1e-6);
      return;
    }
    expect(agreement(s0!, rsd)).toBeGreaterThan(digits);
    se.forEach((value, j) => expect(agreement(s0! * Math.sqrt(cofactors.get(j, j)), value)).toBeGreaterThan(digits));
  });

  it('has redundancy numbers that add up to its degrees of freedom', () => {
    expect(redundancy.reduce((sum, each) => sum + each, 0)).toBeCloseTo(df, 8);
  });
});

function regression(data: number[][], terms: (row: number[]) => number[]): LeastSquaresProblem {
  const jacobian = data.map((row) => Float64Array.from(terms(row)));
  return {
    start: new Float64Array(jacobian[0]!.length),
    evaluate: (x) => ({
      jacobian,
      misfit: Float64Array.from(data, ([y], i) => y! - jacobian[i]!.reduce((sum, each, j) => sum + each * x[j]!, 0)),
    }),
  };
}

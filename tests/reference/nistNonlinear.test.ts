// Certified values: NIST/ITL Statistical Reference Datasets, nonlinear regression; see `source` in each data file.
// Both of NIST's starts are tried: the first far from the answer, the second near. Derivatives come from the
// adjustment's own automatic differentiation.
import { describe, expect, it } from 'vitest';
import { add, chain, constant, type Dual, divide, multiply, scale, shift } from '../../src/core/dual';
import { type LeastSquaresProblem, solveLeastSquares } from '../../src/core/least-squares';
import chwirut2 from './data/nist_nls_chwirut2.json';
import danwood from './data/nist_nls_danwood.json';
import eckerle4 from './data/nist_nls_eckerle4.json';
import gauss1 from './data/nist_nls_gauss1.json';
import hahn1 from './data/nist_nls_hahn1.json';
import mgh09 from './data/nist_nls_mgh09.json';
import misra1a from './data/nist_nls_misra1a.json';
import misra1b from './data/nist_nls_misra1b.json';
import thurber from './data/nist_nls_thurber.json';

interface DataSet {
  data: number[][];
  start1: number[];
  start2: number[];
  certified: { beta: number[]; se: number[]; rss: number; df: number };
}
type Model = (b: Dual[], x: number) => Dual;

const exponential = (a: Dual): Dual => chain(Math.exp(a.value), Math.exp(a.value), a);
const square = (a: Dual): Dual => multiply(a, a);
const polynomial = (b: Dual[], x: number): Dual => b.reduceRight((sum, each) => add(scale(sum, x), each), constant(0));
/** Bell curve exp(−((x − centre)/width)²). */
const bell = (x: number, centre: Dual, width: Dual): Dual =>
  exponential(scale(square(divide(shift(scale(centre, -1), x), width)), -1));
const cubicOverCubic: Model = (b, x) =>
  divide(polynomial(b.slice(0, 4), x), polynomial([constant(1), ...b.slice(4)], x));

const SETS: [string, DataSet, Model][] = [
  ['Misra1a', misra1a, ([b1, b2], x) => multiply(b1!, shift(scale(exponential(scale(b2!, -x)), -1), 1))],
  [
    'Misra1b',
    misra1b,
    ([b1, b2], x) => multiply(b1!, shift(scale(divide(constant(1), square(shift(scale(b2!, x / 2), 1))), -1), 1)),
  ],
  ['DanWood', danwood, ([b1, b2], x) => multiply(b1!, exponential(scale(b2!, Math.log(x))))],
  ['Chwirut2', chwirut2, ([b1, b2, b3], x) => divide(exponential(scale(b1!, -x)), polynomial([b2!, b3!], x))],
  ['Eckerle4', eckerle4, ([b1, b2, b3], x) => multiply(divide(b1!, b2!), bell(x, b3!, scale(b2!, Math.SQRT2)))],
  [
    'MGH09',
    mgh09,
    ([b1, b2, b3, b4], x) => divide(multiply(b1!, shift(scale(b2!, x), x * x)), add(shift(scale(b3!, x), x * x), b4!)),
  ],
  [
    'Gauss1',
    gauss1,
    ([b1, b2, b3, b4, b5, b6, b7, b8], x) =>
      add(
        multiply(b1!, exponential(scale(b2!, -x))),
        add(multiply(b3!, bell(x, b4!, b5!)), multiply(b6!, bell(x, b7!, b8!))),
      ),
  ],
  ['Hahn1', hahn1, cubicOverCubic],
  ['Thurber', thurber, cubicOverCubic],
];

function regression({ data }: DataSet, model: Model, start: number[]): LeastSquaresProblem {
  return {
    start,
    evaluate(x) {
      const unknowns = Array.from(x, (value, j) => {
        const gradient = new Float64Array(x.length);
        gradient[j] = 1;
        return { value, gradient };
      });
      const predictions = data.map(([, at]) => model(unknowns, at!));
      return {
        misfit: Float64Array.from(data, ([y], i) => y! - predictions[i]!.value),
        jacobian: predictions.map(({ gradient }) => gradient!),
      };
    },
  };
}

describe.each(SETS)('%s', (_, set, model) => {
  it.each([
    ['far', set.start1],
    ['near', set.start2],
  ])('from the %s start', (_, start) => {
    const outcome = solveLeastSquares(regression(set, model, start), { maxIterations: 500 });
    if (!outcome.ok) throw new Error(outcome.reason);
    const { x, s0, cofactors, dof, misfit } = outcome.solution;
    const { beta, se, rss, df } = set.certified;
    expect(dof).toBe(df);
    const squares = misfit.reduce((sum, each) => sum + each * each, 0);
    expect(Math.abs(squares / rss - 1)).toBeLessThan(1e-8);
    beta.forEach((value, j) => {
      expect(Math.abs(x[j]! / value - 1), `b${j + 1}`).toBeLessThan(1e-6);
      expect(Math.abs((s0! * Math.sqrt(cofactors.get(j, j))) / se[j]! - 1), `se ${j + 1}`).toBeLessThan(1e-6);
    });
  });
});

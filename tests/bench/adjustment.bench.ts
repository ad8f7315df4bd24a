import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import type { Job } from '../../src/core';
import { solve } from '../../src/core';
import { adjust } from '../../src/core/adjust';
import { valuesOnly } from '../../src/core/alcove';
import type { LeastSquaresProblem } from '../../src/core/least-squares';
import { fullPlan, jobWith, noisy, plausibleAlcove } from '../simulate';
import type { Row } from './bench';
import { timeTogether } from './time';

export const name = 'adjustment';
export const about =
  'Full adjustment of 60 readings (covariance, redundancy, tests), against ml-levenberg-marquardt on the same problem, which gives the unknowns alone.';

/** Agreement asked of the package: every prediction within this many sigmas of the adjustment's. */
const AGREES = 1e-3;

export function run(): Row[] {
  const alcove = plausibleAlcove(7);
  const plan = fullPlan(alcove);
  const again = plan.slice(0, 4).map((reading) => ({ ...reading, id: `${reading.id} again` }));
  const job = jobWith(noisy([...plan, ...again], 7));
  const adjustment = adjust(job);
  const { problem, solution } = adjustment;

  const given = packageFit(problem, derivativesGiven(problem));
  const own = packageFit(problem, differencesOf(job));
  const iterations = {
    given: iterationsNeeded(given, problem, solution),
    own: iterationsNeeded(own, problem, solution),
  };
  const times = timeTogether({
    adjust: () => adjust(job),
    given: () => given(iterations.given),
    own: () => own(iterations.own),
    solve: () => solve(job),
  });
  return [
    {
      what: `adjustment of ${job.readings.length} readings, against a package alone`,
      value: times.adjust,
      unit: 'ms',
      against: { what: 'package, its own differences', value: times.own },
      asked: { of: 'ratio', atMost: 1 },
      note: `${solution.misfit.length} rows, ${solution.x.length} unknowns, ${solution.iterations} iterations; package ${iterations.own}`,
    },
    {
      what: `adjustment of ${job.readings.length} readings, against a package given the derivatives`,
      value: times.adjust,
      unit: 'ms',
      against: { what: 'package, given the derivatives', value: times.given },
      asked: { atMost: 5 },
      note: `package ${iterations.given} iterations`,
    },
    { what: 'job to result', value: times.solve, unit: 'ms' },
  ];
}

type Fit = (maxIterations: number) => Float64Array;
interface Model {
  predictions(x: Float64Array): ArrayLike<number>;
  derivatives?(x: Float64Array): ArrayLike<number>[];
}

/** The problem as a curve fit of row numbers, unknowns scaled to the lengths of their columns. */
function packageFit(problem: LeastSquaresProblem, { predictions, derivatives }: Model): Fit {
  const start = Float64Array.from(problem.start);
  const { misfit, jacobian } = problem.evaluate(start);
  const scale = start.map((_, j) => 1 / Math.hypot(...jacobian.map((row) => row[j]!)));
  const unscaled = (p: readonly number[]): Float64Array => scale.map((each, j) => each * p[j]!);
  const rows = Array.from(misfit.keys());
  const known = { x: rows, y: rows.map(() => 0) };
  return (maxIterations) => {
    const { parameterValues } = levenbergMarquardt(
      known,
      (p) => {
        const values = predictions(unscaled(p));
        return (i) => values[i]!;
      },
      {
        initialValues: Array.from(start, (value, j) => value / scale[j]!),
        damping: 1e-7,
        gradientDifference: 1e-4,
        maxIterations,
        errorTolerance: 0,
        ...(derivatives && {
          jacobianFunction: (p) => {
            const values = derivatives(unscaled(p));
            return (i) => Array.from(values[i]!, (partial, j) => partial * scale[j]!);
          },
        }),
      },
    );
    return unscaled(parameterValues);
  };
}

/** Predictions and derivatives as the adjustment has them, worked out once for each set of unknowns. */
function derivativesGiven(problem: LeastSquaresProblem): Model {
  let last: { x: Float64Array; misfit: Float64Array; jacobian: Float64Array[] } | null = null;
  const at = (x: Float64Array) => {
    if (last === null || x.some((value, j) => value !== last!.x[j])) last = { x, ...problem.evaluate(x) };
    return last;
  };
  return { predictions: (x) => at(x).misfit.map((each) => -each), derivatives: (x) => at(x).jacobian };
}

/** Predictions alone, at their cheapest. */
function differencesOf(job: Job): Model {
  const { model, problem, observations, solution } = adjust(job);
  const p = model.parameters.length;
  const standoffs = solution.jacobian.map((row) => row.findIndex((partial, j) => j >= p && partial !== 0));
  return {
    predictions(x) {
      const alcove = valuesOnly(model.build(x.subarray(0, p)));
      return problem.rows.map((row, i) => {
        if ('parameter' in row)
          return (x[row.parameter]! - model.parameters[row.parameter]!.start) * solution.jacobian[i]![row.parameter]!;
        if (!('observation' in row)) throw new Error('no scans here');
        const { predict, observed, sd } = observations[row.observation]!;
        const standoff = standoffs[i] === -1 ? 0 : x[standoffs[i]!]!;
        return (predict(alcove).value + standoff - observed) / sd;
      });
    },
  };
}

function iterationsNeeded(fit: Fit, problem: LeastSquaresProblem, solution: { misfit: Float64Array }): number {
  for (let iterations = 1; iterations <= 100; iterations++) {
    const { misfit } = problem.evaluate(fit(iterations));
    if (misfit.every((each, i) => Math.abs(each - solution.misfit[i]!) < AGREES)) return iterations;
  }
  throw new Error('the package does not reach the same adjustment in 100 iterations');
}

import type { Matrix } from 'ml-matrix';
import { type Alcove, type AlcoveModel, alcoveModel } from '../alcove';
import type { Dual } from '../dual';
import type { Job } from '../job-file';
import {
  type LeastSquaresOutcome,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  solveLeastSquares,
} from '../least-squares';
import { type Observation, observationsOf } from '../survey';

/** The alcove that fits the readings best, with its covariance. */
export interface Adjustment {
  model: AlcoveModel;
  alcove: Alcove;
  /** all observations, those of readings marked off included */
  observations: Observation[];
  /** per observation its row in the solution, or null while its reading is off */
  rows: (number | null)[];
  /** parameters held by a placeholder because no reading and no prior determines them, by index */
  placeholders: number[];
  /** unknowns: the model's parameters, then one standoff per plumb reading in use */
  solution: LeastSquaresSolution;
  /** covariance of the model's parameters, p × p */
  covariance: Matrix;
}

/** A size that nothing measures is drawn at its nominal value with this standard deviation, mm. */
const PLACEHOLDER_SD = 300;

/**
 * Adjusts the alcove to the readings: weighted Gauss–Newton with the job's weak priors as observations of value 0
 * (design section 4). Sizes and positions have no prior; those that the readings leave open are held at their
 * nominal value by a placeholder, so that any survey, even an empty one, draws.
 */
export function adjust(job: Job): Adjustment {
  const model = alcoveModel(job);
  const observations = observationsOf(job.readings, job.instruments);
  const used = observations.filter((each) => job.readings[each.reading]!.off !== true);
  const solved = solveWithPlaceholders(model, used);
  const p = model.parameters.length;
  let row = 0;
  return {
    model,
    alcove: model.build(solved.solution.x.subarray(0, p)),
    observations,
    rows: observations.map((each) => (used.includes(each) ? row++ : null)),
    placeholders: solved.placeholders,
    solution: solved.solution,
    covariance: solved.solution.cofactors.subMatrix(0, p - 1, 0, p - 1),
  };
}

/** Standard deviation of a quantity from its derivatives with respect to the model's parameters. */
export function standardDeviation({ gradient }: Dual, covariance: Matrix): number {
  return gradient === null ? 0 : Math.sqrt(Math.max(0, quadraticForm(gradient, covariance)));
}

function quadraticForm(g: Float64Array, c: Matrix): number {
  let total = 0;
  for (let i = 0; i < g.length; i++) {
    if (g[i] === 0) continue;
    let row = 0;
    for (let j = 0; j < g.length; j++) row += c.get(i, j) * g[j]!;
    total += g[i]! * row;
  }
  return total;
}

function solveWithPlaceholders(model: AlcoveModel, used: Observation[]) {
  let placeholders: number[] = [];
  let outcome = solveLeastSquares(problemOf(model, used, placeholders));
  if (!outcome.ok) {
    placeholders = openSizes(model, outcome);
    outcome = solveLeastSquares(problemOf(model, used, placeholders));
  }
  if (!outcome.ok) {
    placeholders = model.parameters.flatMap(({ priorSd }, j) => (priorSd === null ? [j] : []));
    outcome = solveLeastSquares(problemOf(model, used, placeholders));
  }
  if (!outcome.ok) throw new Error(`adjustment with every unknown held: ${outcome.reason}`);
  return { solution: outcome.solution, placeholders };
}

/** Sizes with a share in a direction that the readings leave open. */
function openSizes(model: AlcoveModel, { nullSpace }: Extract<LeastSquaresOutcome, { ok: false }>): number[] {
  return model.parameters.flatMap(({ priorSd }, j) =>
    priorSd === null && nullSpace.some((direction) => Math.abs(direction[j]!) > 1e-6) ? [j] : [],
  );
}

function problemOf(model: AlcoveModel, used: Observation[], placeholders: number[]): LeastSquaresProblem {
  const p = model.parameters.length;
  const standoffOf = standoffColumns(used, p);
  const held = model.parameters.flatMap(({ priorSd, start }, j) => {
    const sd = priorSd ?? (placeholders.includes(j) ? PLACEHOLDER_SD : null);
    return sd === null ? [] : [{ j, sd, mean: start }];
  });
  const n = p + new Set(standoffOf.values()).size;
  const m = used.length + held.length;
  const start = new Float64Array(n);
  model.parameters.forEach((parameter, j) => {
    start[j] = parameter.start;
  });

  return {
    start,
    evaluate(x) {
      const alcove = model.build(x.subarray(0, p));
      const misfit = new Float64Array(m);
      const jacobian = Array.from({ length: m }, () => new Float64Array(n));
      used.forEach((observation, i) => {
        const { observed, sd } = observation;
        const { value, gradient } = observation.predict(alcove);
        const column = observation.standoff ? standoffOf.get(observation.reading)! : null;
        misfit[i] = (observed - value - (column === null ? 0 : x[column]!)) / sd;
        const row = jacobian[i]!;
        if (column !== null) row[column] = 1 / sd;
        if (gradient !== null) for (let j = 0; j < p; j++) row[j]! += gradient[j]! / sd;
      });
      held.forEach(({ j, sd, mean }, k) => {
        misfit[used.length + k] = (mean - x[j]!) / sd;
        jacobian[used.length + k]![j] = 1 / sd;
      });
      return { misfit, jacobian };
    },
  };
}

/** Column of each plumb reading's standoff, by index of the reading. */
function standoffColumns(used: Observation[], first: number): Map<number, number> {
  const columns = new Map<number, number>();
  for (const { standoff, reading } of used) {
    if (standoff && !columns.has(reading)) columns.set(reading, first + columns.size);
  }
  return columns;
}

import { type Alcove, type AlcoveModel, alcoveModel, type Unevenness } from '../alcove';
import type { Job } from '../job-file';
import {
  type LeastSquaresOptions,
  type LeastSquaresOutcome,
  type LeastSquaresSolution,
  solveLeastSquares,
} from '../least-squares';
import { cellNormals, condensedRows, scanParameters, type WeightedScan } from '../scanned';
import type { Observation } from '../survey';
import { type AlcoveProblem, alcoveProblem, type Hold } from './problem';
import { settled } from './settled';

/** What an adjustment supposes besides the readings. */
export interface Supposition {
  /** walls with a spline */
  uneven: Unevenness[];
  /** parameters whose prior does not count, by index: the readings show that the wall is farther out than walls are */
  released: number[];
  /** factor on every reading's standard deviation */
  scale: number;
  /** scans in use */
  scans: WeightedScan[];
}

/** One least-squares fit of an alcove. */
export interface AlcoveFit {
  supposition: Supposition;
  model: AlcoveModel;
  alcove: Alcove;
  problem: AlcoveProblem;
  /** parameters held by a placeholder because no reading and no prior determines them, by index */
  placeholders: number[];
  solution: LeastSquaresSolution;
  /** index of each scan's first unknown among the parameters */
  scanFirsts: number[];
}

/**
 * The last step moves predictions by a ten-thousandth of the misfit; what is left is a hundredth of that or less. Three
 * or four iterations do; readings that contradict each other grossly are left where 25 get them.
 */
export const SOLVER: LeastSquaresOptions = { tolerance: 1e-4, maxIterations: 25 };
/** A size that nothing measures is drawn at its nominal value with this standard deviation, mm. */
const PLACEHOLDER_SD = 300;

/**
 * Weighted Gauss–Newton with the job's weak priors as observations of value 0 (design section 4). Sizes and positions
 * have no prior; those that the readings leave open are held at their nominal value by a placeholder, so that any
 * survey, even an empty one, draws. The cells of scans come in as the rows that stand for all of them near the solution.
 * @param small change of the predictions, in sigmas, at which the cells' rows are near enough
 */
export function fitAlcove(
  job: Job,
  observations: readonly Observation[],
  supposition: Supposition,
  small?: number,
): AlcoveFit {
  const { scans, uneven } = supposition;
  const others = scanParameters(scans);
  const model = alcoveModel(job, uneven, others);
  const scanFirsts = firstsOf(scans, model.parameters.length - others.length);
  const used = observations.flatMap((observation, index) =>
    job.readings[observation.reading]!.off === true
      ? []
      : [{ index, observation: { ...observation, sd: observation.sd * supposition.scale } }],
  );
  const near =
    scans.length === 0
      ? null
      : settled(
          alcoveProblem(model, used, holdsOf(model, supposition, [])),
          model.parameters.length,
          (values, robust) => cellNormals(model, scans, scanFirsts, uneven, values, robust),
          small,
        );
  const cells = near && condensedRows(near);
  const attempt = (placeholders: number[]) => {
    const holds = holdsOf(model, supposition, placeholders);
    const problem = alcoveProblem(model, used, holds, cells, cells?.at);
    return { problem, placeholders, outcome: solveLeastSquares(problem, SOLVER) };
  };
  let { problem, placeholders, outcome } = attempt([]);
  if (!outcome.ok) ({ problem, placeholders, outcome } = attempt(openParameters(model, supposition, outcome)));
  if (!outcome.ok) {
    const every = model.parameters.flatMap(({ priorSd }, j) => (priorSd === null ? [j] : []));
    ({ problem, placeholders, outcome } = attempt([...every, ...supposition.released]));
  }
  if (!outcome.ok) throw new Error(`adjustment with every unknown held: ${outcome.reason}`);
  const { solution } = outcome;
  return {
    supposition,
    model,
    alcove: model.build(solution.x.subarray(0, model.parameters.length)),
    problem,
    placeholders,
    solution,
    scanFirsts,
  };
}

function firstsOf(scans: readonly WeightedScan[], first: number): number[] {
  let next = first;
  return scans.map(({ unknowns }) => {
    next += unknowns.length;
    return next - unknowns.length;
  });
}

function holdsOf(model: AlcoveModel, { released, uneven }: Supposition, placeholders: number[]): Hold[] {
  // The priors of a spline that scans chose stand among the rows for their cells.
  const held = uneven.flatMap(({ wall, scanned }) => (scanned ? [model.pieces[wall][1]!] : []));
  const withCells = (j: number): boolean => held.some(({ basis, offset }) => j >= offset && j < offset + basis.count);
  return model.parameters.flatMap(({ priorSd, start }, parameter): Hold[] => {
    if (placeholders.includes(parameter)) {
      return [{ parameter, mean: start, sd: priorSd ?? PLACEHOLDER_SD, placeholder: true }];
    }
    if (priorSd === null || released.includes(parameter) || withCells(parameter)) return [];
    return [{ parameter, mean: start, sd: priorSd, placeholder: false }];
  });
}

/** Parameters without a prior that share in a direction which the readings leave open. */
function openParameters(
  model: AlcoveModel,
  { released }: Supposition,
  { nullSpace }: Extract<LeastSquaresOutcome, { ok: false }>,
): number[] {
  return model.parameters.flatMap(({ priorSd }, j) =>
    (priorSd === null || released.includes(j)) && nullSpace.some((direction) => Math.abs(direction[j]!) > 1e-6)
      ? [j]
      : [],
  );
}

import { alcoveModel, insideCorner, type Unevenness } from '../alcove';
import { type Job, type Reading, WALLS, type WallName } from '../job-file';
import { type LeastSquaresSolution, solveLeastSquares, withoutRows } from '../least-squares';
import { fieldEvidence, groupTest } from '../reliability';
import type { Observation } from '../survey';
import { type Examination, gainFromRoughness } from './examine';
import { type AlcoveFit, SOLVER } from './fit';

/** Prior standard deviations of the spline's coefficients that are tried, mm. */
const SIZES = [0.75, 1.5, 3, 6];
/**
 * Twice the logarithm of 1000: the readings must be a thousand times likelier on an uneven wall, which on an even one
 * happens in at most one survey of a thousand.
 */
const CALL = 2 * Math.log(1000);
/** A wall whose readings fit better than this probability has nothing to explain. */
const FITS_WELL = 0.05;
/** Readings that disagree by more than this many times what their instruments allow tell nothing of a wall's shape. */
const BEYOND_ROUGH = 5;
/** A stretch shorter than this is taken to be this long, mm. */
const LEAST_STRETCH = 300;

/**
 * The wall whose readings call loudest for a spline, or null: those that are a thousand times likelier with one, and
 * better explained by it than by misread readings on that wall or by rough measuring, each charged what its test asks.
 */
export function callForUnevenness(
  job: Job,
  observations: readonly Observation[],
  fit: AlcoveFit,
  examination: Examination,
): Unevenness | null {
  if (examination.scale > BEYOND_ROUGH || examination.search.exhausted) return null;
  const { uneven, scans } = fit.supposition;
  // A scan tells the shape of the walls that it shows.
  const shaped = (wall: WallName): boolean =>
    uneven.some((each) => each.wall === wall) || scans.some(({ cells }) => cells[wall] !== undefined);
  const calls = WALLS.filter((wall) => !shaped(wall)).flatMap((wall) =>
    callOf(wall, job, observations, fit, examination),
  );
  if (calls.length === 0) return null;
  return calls.reduce((a, b) => (b.lead > a.lead ? b : a)).unevenness;
}

function callOf(
  wall: WallName,
  job: Job,
  observations: readonly Observation[],
  fit: AlcoveFit,
  examination: Examination,
): { lead: number; unevenness: Unevenness }[] {
  const { search } = examination;
  /** Readings that a hump of the wall would show in, and the wall's own priors. */
  const concerned = fit.problem.rows.map((row) =>
    'observation' in row
      ? touches(job.readings[observations[row.observation]!.reading]!, wall)
      : 'parameter' in row && fit.model.parameters[row.parameter]!.name.startsWith(`${wall}.`),
  );
  const wrong = search.blunders.map(({ row }) => row);
  const wrongHere = wrong.filter((row) => concerned[row]);
  const readingsHere = search.kept.flatMap((row, i) =>
    concerned[row] && 'observation' in fit.problem.rows[row]! ? [i] : [],
  );
  if (wrongHere.length === 0 && groupTest(search.cleaned, readingsHere).probability > FITS_WELL) return [];

  const stretch = panelledStretch(job, fit, wall);
  const columns = splineColumns(job, observations, fit, concerned, { wall, ...stretch, sd: 1 });
  const leadOver = (solution: LeastSquaresSolution, kept: number[], otherwise: number) => {
    const { twiceLog, size } = fieldEvidence(
      solution,
      kept.map((row) => columns[row]!),
      SIZES,
    );
    const lead = twiceLog - CALL - Math.max(0, otherwise);
    return lead > 0 ? [{ lead, unevenness: { wall, ...stretch, sd: size } }] : [];
  };
  const roughness = gainFromRoughness(examination);
  const cleanedCalls = leadOver(search.cleaned, search.kept, roughness);
  if (wrongHere.length === 0) return cleanedCalls;

  const elsewhere = new Set(wrong.filter((row) => !concerned[row]));
  const withHere = solutionWithout(fit, elsewhere);
  if (withHere === null) return cleanedCalls;
  const fromSuspects = cost(withHere) - cost(search.cleaned) - wrongHere.length * search.critical ** 2;
  const kept = Array.from(concerned.keys()).filter((row) => !elsewhere.has(row));
  return [...leadOver(withHere, kept, fromSuspects + roughness), ...cleanedCalls];
}

function solutionWithout({ problem, solution }: AlcoveFit, rows: ReadonlySet<number>): LeastSquaresSolution | null {
  if (rows.size === 0) return solution;
  const outcome = solveLeastSquares(withoutRows(problem, rows, solution.x), SOLVER);
  return outcome.ok ? outcome.solution : null;
}

/** Whether a reading would show a hump on the wall. */
function touches(reading: Reading, wall: WallName): boolean {
  switch (reading.kind) {
    case 'plumb':
    case 'straightedge':
      return reading.wall === wall;
    case 'tape-to-rim':
      return false;
    case 'span':
      return wall !== 'back';
    case 'diagonal':
      return true;
    case 'depth':
      return wall === 'back' || reading.wall === wall;
    default:
      return wall === 'back' || reading.side === wall;
  }
}

/** The panelled stretch of a wall. */
export function panelledStretch(job: Job, { alcove }: AlcoveFit, wall: WallName): Pick<Unevenness, 'at' | 'height'> {
  const long = ([from, to]: [number, number]): [number, number] => [from, Math.max(to, from + LEAST_STRETCH)];
  const at: [number, number] =
    wall === 'back'
      ? [insideCorner(alcove, 'left', 0).x.value, insideCorner(alcove, 'right', 0).x.value]
      : [0, alcove.front[wall].value(0, 0)];
  return { at: long(at), height: long([alcove.rim.value(0, 0), job.fit.top]) };
}

/** Derivatives of every row with respect to the coefficients of a further spline, whitened. */
function splineColumns(
  job: Job,
  observations: readonly Observation[],
  { supposition, model, problem, solution }: AlcoveFit,
  concerned: readonly boolean[],
  unevenness: Unevenness,
): Float64Array[] {
  const richer = alcoveModel(job, [...supposition.uneven, unevenness]);
  // What a scan does not know of itself comes after all splines, and has no part in the surfaces.
  const p = model.parameters.length - supposition.scans.reduce((sum, { unknowns }) => sum + unknowns.length, 0);
  const values = new Float64Array(richer.parameters.length);
  values.set(solution.x.subarray(0, p));
  const alcove = richer.build(values);
  return problem.rows.map((row, i) => {
    const spline = new Float64Array(values.length - p);
    if (!concerned[i] || !('observation' in row)) return spline;
    const { predict, sd } = observations[row.observation]!;
    const { gradient } = predict(alcove);
    return gradient === null ? spline : gradient.subarray(p).map((partial) => partial / (sd * supposition.scale));
  });
}

const cost = ({ misfit }: LeastSquaresSolution): number => misfit.reduce((sum, each) => sum + each * each, 0);

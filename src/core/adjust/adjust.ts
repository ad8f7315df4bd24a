import type { Matrix } from 'ml-matrix';
import type { Unevenness } from '../alcove';
import type { Dual } from '../dual';
import type { Job } from '../job-file';
import { fewerCells, type ScanReport, scanReports, scansInUse, type WeightedScan, weighScans } from '../scanned';
import { type Observation, observationsOf } from '../survey';
import { type Examination, examine } from './examine';
import { type AlcoveFit, fitAlcove, type Supposition } from './fit';
import { ROUGHLY } from './settled';
import { callForUnevenness, panelledStretch } from './unevenness';

/** The alcove that fits the readings best, with its covariance and what the tests say. */
export interface Adjustment extends AlcoveFit {
  /** all observations, those of readings marked off included */
  observations: Observation[];
  /** per observation its row in the solution, or null while its reading is off */
  rowOf: (number | null)[];
  /** covariance of the model's parameters, p × p */
  covariance: Matrix;
  examination: Examination;
  /** standard deviation of unit weight with the instruments' own standard deviations; null without redundancy */
  s0: number | null;
  scans: ScanReport[];
}

/** A prior lets go when the readings stand farther off than this many standard deviations: one in two million by chance. */
const LETS_GO = 5;

/**
 * Adjusts the alcove to the readings (design section 4). No reading is dropped: suspects are named, and stay in. What the
 * readings themselves settle is supposed and the fit repeated: a wall that they show to be uneven gets a spline, a prior
 * that they contradict lets go, and where they disagree by more than their instruments allow, suspects aside, their
 * standard deviations are scaled up until they agree.
 */
export function adjust(job: Job): Adjustment {
  const observations = observationsOf(job.readings, job.instruments);
  const { scans, uneven } = scanned(job, observations);
  const tried = (more: Partial<Supposition>): AlcoveFit =>
    fitAlcove(job, observations, { uneven, released: [], scale: 1, scans, ...more });

  let fit = tried({});
  let examination = examine(fit);
  for (;;) {
    const call = callForUnevenness(job, observations, fit, examination);
    if (call === null) break;
    uneven.push(call);
    fit = tried({});
    examination = examine(fit);
  }
  const { s0 } = fit.solution;
  const released = contradicted(fit, examination);
  if (released.length > 0) {
    fit = tried({ released });
    examination = examine(fit);
  }
  const { scale } = examination;
  if (scale > 1) fit = tried({ released, scale });
  return assembled(observations, fit, examination, s0);
}

/** Scans in use with their weights, and the splines that their cells call for, from a first fit without either. */
function scanned(job: Job, observations: Observation[]): { scans: WeightedScan[]; uneven: Unevenness[] } {
  const used = scansInUse(job);
  if (used.length === 0) return { scans: [], uneven: [] };
  const plain = used.map((scan): WeightedScan => ({ ...fewerCells(scan), factor: {} }));
  const first = fitAlcove(job, observations, { uneven: [], released: [], scale: 1, scans: plain }, ROUGHLY);
  return weighScans(
    used,
    (s) => {
      const of = (name: 'across' | 'up' | 'out'): number => {
        const k = used[s]!.unknowns.indexOf(name);
        return k < 0 ? 0 : first.solution.x[first.scanFirsts[s]! + k]!;
      };
      return { across: of('across'), up: of('up'), out: of('out') };
    },
    (wall) => panelledStretch(job, first, wall),
  );
}

/** Priors that the readings speak against, and that no reading could stand in for. */
function contradicted({ problem }: AlcoveFit, { search }: Examination): number[] {
  return search.blunders.flatMap(({ row, alternatives, statistic }) => {
    const meaning = problem.rows[row]!;
    return 'parameter' in meaning &&
      statistic > LETS_GO &&
      alternatives.every((other) => 'parameter' in problem.rows[other]!)
      ? [meaning.parameter]
      : [];
  });
}

function assembled(
  observations: Observation[],
  fit: AlcoveFit,
  examination: Examination,
  s0: number | null,
): Adjustment {
  const rowOf = observations.map((): number | null => null);
  fit.problem.rows.forEach((row, i) => {
    if ('observation' in row) rowOf[row.observation] = i;
  });
  const p = fit.model.parameters.length;
  const covariance = fit.solution.cofactors.subMatrix(0, p - 1, 0, p - 1);
  const values = fit.solution.x.slice(0, p);
  return {
    ...fit,
    observations,
    rowOf,
    covariance,
    examination,
    s0,
    scans: scanReports(fit.model, fit.supposition.scans, fit.scanFirsts, values, covariance),
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

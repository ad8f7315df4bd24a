import type { LeastSquaresSolution } from '../least-squares';
import type { Adjustment } from './adjust';
import type { ReadingReport, Suspect } from './report';

/** Two-sided 0.1 % point of the normal distribution: a standardized residual beyond it is worth re-measuring (Baarda 1968). */
export const CRITICAL_W = 3.29;
/** Non-centrality for significance 0.001 and power 0.80 (Baarda 1968). */
export const DELTA_0 = 4.13;
/** Below this redundancy nothing worth the name checks a reading. */
const UNCHECKED = 0.05;
/** Residuals correlated beyond this cannot be told apart. */
const INSEPARABLE = 0.95;

/** Residual, standardized residual and reliability of every reading. */
export function readingReports({ observations, rows, solution }: Adjustment): ReadingReport[] {
  return observations.map(({ id, kind, observed, sd }, i) => {
    const row = rows[i]!;
    if (row === null)
      return { id, kind, observed, sd, residual: null, w: null, redundancy: null, mdb: null, flag: 'off' };
    const misfit = solution.misfit[row]!;
    const redundancy = solution.redundancy[row]!;
    const checked = redundancy >= UNCHECKED;
    const w = checked ? Math.abs(misfit) / Math.sqrt(redundancy) : null;
    return {
      id,
      kind,
      observed,
      sd,
      residual: -misfit * sd,
      w,
      redundancy,
      mdb: checked ? (DELTA_0 * sd) / Math.sqrt(redundancy) : null,
      flag: !checked ? 'unchecked' : w! > CRITICAL_W ? 're-measure' : null,
    };
  });
}

/** The reading with the largest standardized residual, if beyond the test, and those it cannot be told from. */
export function findSuspect(adjustment: Adjustment, reports: ReadingReport[]): Suspect | null {
  let worst: ReadingReport | null = null;
  for (const report of reports) {
    if (report.flag === 're-measure' && (worst === null || report.w! > worst.w!)) worst = report;
  }
  if (worst === null) return null;
  const { rows, solution } = adjustment;
  const index = reports.indexOf(worst);
  const alternatives = reports
    .filter(
      (other, i) =>
        other !== worst &&
        other.w !== null &&
        Math.abs(residualCorrelation(solution, rows[index]!, rows[i]!)) > INSEPARABLE,
    )
    .map(({ id }) => id);
  return {
    id: worst.id,
    w: worst.w!,
    fits: worst.observed + worst.residual! / worst.redundancy!,
    located: alternatives.length === 0,
    alternatives,
  };
}

/** Correlation of two rows' residuals, from the residual cofactors I − Q Qᵀ. */
function residualCorrelation({ orthogonal, redundancy }: LeastSquaresSolution, i: number, j: number): number {
  let product = 0;
  for (let k = 0; k < orthogonal[i]!.length; k++) product += orthogonal[i]![k]! * orthogonal[j]![k]!;
  return -product / Math.sqrt(redundancy[i]! * redundancy[j]!);
}

/** True where the readings carry less than half of what is known about a parameter; the prior or placeholder, the rest. */
export function assumedParameters({ model, placeholders, covariance }: Adjustment): boolean[] {
  return model.parameters.map(
    ({ priorSd }, j) => placeholders.includes(j) || (priorSd !== null && covariance.get(j, j) > 0.5 * priorSd ** 2),
  );
}

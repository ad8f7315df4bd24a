import { DELTA_0 } from '../reliability';
import type { Adjustment } from './adjust';
import { largestMove, type Response } from './cutEdgeMoves';
import type { ReadingReport, Suspect } from './report';

/** Below this redundancy nothing worth the name checks a reading. */
const UNCHECKED = 0.05;

/** Residual, standardized residual and reliability of every reading (Baarda 1968). */
export function readingReports(
  { observations, rowOf, solution, supposition }: Adjustment,
  suspects: readonly Suspect[],
  responses: readonly Response[],
): ReadingReport[] {
  const doubted = new Set(suspects.flatMap(({ id, alternatives }) => [id, ...alternatives]));
  return observations.map(({ id, kind, observed, sd: given }, i) => {
    const row = rowOf[i]!;
    const sd = given * supposition.scale;
    const common = { id, kind, observed, sd };
    if (row === null) {
      return { ...common, residual: null, w: null, redundancy: null, mdb: null, external: null, flag: 'off' };
    }
    const redundancy = solution.redundancy[row]!;
    const checked = redundancy >= UNCHECKED;
    const detectable = checked ? DELTA_0 / Math.sqrt(redundancy) : null;
    return {
      ...common,
      residual: -solution.misfit[row]! * sd,
      w: checked ? Math.abs(solution.misfit[row]!) / Math.sqrt(redundancy) : null,
      redundancy,
      mdb: detectable === null ? null : detectable * sd,
      external: detectable === null ? null : largestMove(responses, [solution.jacobian[row]!], [detectable]),
      flag: doubted.has(id) ? 're-measure' : checked ? null : 'unchecked',
    };
  });
}

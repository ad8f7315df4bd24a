import {
  type Adjustment,
  type AdjustmentReport,
  assumedParameters,
  kindReports,
  readingReports,
  responsesOf,
  scanFindings,
  suspectsOf,
} from './adjust';
import type { Job } from './job-file';
import { cutEdges, nextReading } from './plan';

/** What the adjustment found, in plain numbers and words. */
export function adjustmentReport(adjustment: Adjustment, job: Job): AdjustmentReport {
  const { alcove, model, solution, covariance, examination, supposition, s0 } = adjustment;
  const edges = cutEdges(alcove, job);
  const responses = responsesOf(edges, solution.cofactors);
  const suspects = suspectsOf(adjustment, job, responses);
  const readings = readingReports(adjustment, suspects, responses);
  const assumed = assumedParameters(adjustment);
  const assumedWords = assumedLabels(adjustment, assumed);
  return {
    dof: solution.dof,
    s0,
    iterations: solution.iterations,
    readings,
    suspect: suspects[0] ?? null,
    suspects,
    test: examination.test,
    critical: finiteOrNull(examination.search.critical),
    global: examination.global,
    kinds: kindReports(adjustment),
    scale: supposition.scale,
    scans: scanFindings(adjustment, job, readings, assumedWords),
    uneven: supposition.uneven.map(({ wall }) => wall),
    beyondPrior: supposition.released.map((j) => model.parameters[j]!.label),
    next: nextReading(adjustment, job, edges),
    assumed: assumedWords,
    parameters: model.parameters.flatMap(({ name, unlisted }, j) =>
      unlisted ? [] : [{ name, value: solution.x[j]!, sd: Math.sqrt(covariance.get(j, j)), assumed: assumed[j]! }],
    ),
  };
}

/** Each once; the coefficients of a spline share a label, which stands when most of them are assumed. */
function assumedLabels({ model: { parameters } }: Adjustment, assumed: readonly boolean[]): string[] {
  const labels = new Set(parameters.flatMap(({ label, quiet }) => (quiet ? [] : [label])));
  return [...labels].filter((label) => {
    const mine = parameters.flatMap((each, j) => (each.label === label ? [assumed[j]!] : []));
    return mine.filter(Boolean).length > mine.length / 2;
  });
}

const finiteOrNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

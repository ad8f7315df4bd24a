import {
  type Adjustment,
  type AdjustmentReport,
  adjust,
  assumedParameters,
  findSuspect,
  readingReports,
} from './adjust';
import { diagnose } from './diagnose';
import type { Job, WallName } from './job-file';
import { fitPanel, holeProblems, type Panel, type Problem } from './panel';
import { nextReading } from './plan';
import type { Result } from './result';

/**
 * Everything that follows from a job: the adjusted alcove, what is out of true, the fitted panels and what keeps the
 * job from being built. Deterministic; never throws on a validated job.
 */
export function solve(job: Job): Result {
  const adjustment = adjust(job);
  const problems: Problem[] = [];
  const fit = (name: WallName): Panel => {
    const fitted = fitPanel(adjustment.alcove, adjustment.covariance, job, name);
    problems.push(...fitted.problems, ...holeProblems(fitted.panel));
    return fitted.panel;
  };
  return {
    format: 'nookwright-result',
    version: 1,
    adjustment: adjustmentReport(adjustment, job),
    ...diagnose(adjustment, job),
    panels: { back: fit('back'), left: fit('left'), right: fit('right') },
    pieces: { trim: [], legs: [], fillers: [], shelves: [] },
    materials: {},
    sequence: [],
    problems,
  };
}

function adjustmentReport(adjustment: Adjustment, job: Job): AdjustmentReport {
  const { model, solution, covariance } = adjustment;
  const readings = readingReports(adjustment);
  const assumed = assumedParameters(adjustment);
  return {
    dof: solution.dof,
    s0: solution.s0,
    iterations: solution.iterations,
    readings,
    suspect: findSuspect(adjustment, readings),
    next: nextReading(adjustment, job),
    assumed: model.parameters.filter((_, j) => assumed[j]).map(({ label }) => label),
    parameters: model.parameters.map(({ name }, j) => ({
      name,
      value: solution.x[j]!,
      sd: Math.sqrt(covariance.get(j, j)),
      assumed: assumed[j]!,
    })),
  };
}

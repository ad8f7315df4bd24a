import { adjust } from './adjust';
import { adjustmentReport } from './adjustmentReport';
import { adviceFor } from './advice';
import { restrained } from './alcove';
import { gettingIn } from './carry';
import { diagnose } from './diagnose';
import { fitPieces } from './fitPieces';
import type { Job, WallName } from './job-file';
import { materialsFor } from './materials';
import { fitPanel, type Panel, type Problem } from './panel';
import type { Piece } from './piece';
import type { Result } from './result';
import { sequenceFor } from './sequence';
import { withVerdicts } from './verdict';

/**
 * Everything that follows from a job: the adjusted alcove, what is out of true, the fitted panels and what keeps the
 * job from being built. Deterministic; never throws on a validated job.
 */
export function solve(job: Job): Result {
  const adjustment = adjust(job);
  const { alcove, beyond } = restrained(adjustment.alcove, job.fit.top);
  const problems: Problem[] = beyond.map(({ where, words }) => ({
    where,
    what: `the readings put the ${words} where none can be; look for one that was misread or mistyped`,
    howMuch: null,
  }));
  const fit = (name: WallName): Panel => {
    const fitted = fitPanel(alcove, adjustment.covariance, job, name);
    problems.push(...fitted.problems);
    return fitted.panel;
  };
  const panels = { back: fit('back'), left: fit('left'), right: fit('right') };
  const { pieces, layout, problems: pieceProblems } = fitPieces(alcove, adjustment.covariance, job, panels);
  problems.push(...pieceProblems);
  const bought = materialsFor(alcove, job, { panels, ...pieces, layout });
  problems.push(...bought.problems);
  const carried = gettingIn(alcove, adjustment.covariance, job, panels);
  problems.push(...carried.problems);
  const report = adjustmentReport(adjustment, job);
  return {
    format: 'nookwright-result',
    version: 1,
    adjustment: report,
    ...withVerdicts(job, report, diagnose(adjustment, job), panels),
    panels,
    pieces,
    layout,
    materials: bought.materials,
    gettingIn: carried.gettingIn,
    sequence: sequenceFor(job, {
      panels,
      materials: bought.materials,
      gettingIn: carried.gettingIn,
      legs: pieces.legs.map(labelled),
      trim: pieces.trim.map(labelled),
      shelves: pieces.shelves.map(labelled),
    }),
    problems,
    advice: adviceFor(job, panels),
  };
}

const labelled = ({ id, name }: Piece): { id: string; label: string } => ({ id, label: name });

import { adjust } from './adjust';
import { adjustmentReport } from './adjustmentReport';
import { adviceFor } from './advice';
import { restrained } from './alcove';
import { type BedReport, bedProblems, bedReport } from './bed';
import { gettingIn } from './carry';
import { diagnose } from './diagnose';
import { fitPieces } from './fitPieces';
import { type Job, WALLS, type WallName } from './job-file';
import { materialsFor } from './materials';
import { fitPanel, type Panel, type Problem } from './panel';
import type { Piece } from './piece';
import type { Result } from './result';
import { seatFigures, seatPanels } from './seat';
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
  const seating = seatPanels(alcove, job);
  const fit = (name: WallName): Panel => {
    const seated = { edges: seating.edges, ...seatFigures(alcove, job, seating, name) };
    const fitted = fitPanel(alcove, adjustment.covariance, job, name, seated);
    problems.push(...fitted.problems);
    return fitted.panel;
  };
  const panels = { back: fit('back'), left: fit('left'), right: fit('right') };
  const {
    pieces,
    layout,
    problems: pieceProblems,
  } = fitPieces(alcove, adjustment.covariance, job, panels, seating.edges);
  problems.push(...pieceProblems);
  const bought = materialsFor(alcove, job, { panels, ...pieces, layout }, seating);
  problems.push(...bought.problems);
  const bedOf = (name: WallName): BedReport =>
    bedReport(alcove, adjustment.covariance, job, seating, panels[name], bought.materials.adhesive[name]);
  const bedding = { back: bedOf('back'), left: bedOf('left'), right: bedOf('right') };
  for (const name of WALLS) problems.push(...bedProblems(name, bedding[name], job));
  const carried = gettingIn(alcove, adjustment.covariance, job, panels, seating.edges);
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
    bedding,
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

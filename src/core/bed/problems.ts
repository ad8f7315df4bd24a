import type { Job, WallName } from '../job-file';
import type { Problem } from '../panel';
import type { BedReport } from './report';

/** What keeps a sheet from being bedded as it stands. */
export function bedProblems(name: WallName, { hollows, strain, convergence }: BedReport, { bedding }: Job): Problem[] {
  const where = `panels.${name}`;
  const shimmed = bedding.edges === 'shimmed';
  const problems: Problem[] = [];
  const deepest = Math.max(0, ...hollows.map(({ worst }) => worst));
  // Shims carry the adhesive where it would not reach.
  if (hollows.length > 0 && !shimmed) {
    const what =
      'the bed is thicker in places than the adhesive reaches; shim as the list says, build the wall out, or take an adhesive that reaches further';
    problems.push({ where, what, howMuch: deepest });
  }
  if (strain.overBent.length > 0) {
    const what = `the sheet would be bent to ${(100 * strain.max).toFixed(2)} % strain, more than its limit of ${(100 * strain.limit).toFixed(2)} %; prepare the wall, shim it flat or take a thinner sheet`;
    problems.push({ where, what, howMuch: null });
  }
  if (convergence !== null && !convergence.converged) {
    const what = 'how the sheet sits could not be worked out to the end; check its stiffness and what presses it';
    problems.push({ where, what, howMuch: null });
  }
  return problems;
}

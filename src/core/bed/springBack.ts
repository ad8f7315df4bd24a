import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { towardsRoom } from '../alcove';
import { heldAt, splineAt, splineGrid } from '../contact';
import type { Job, WallName } from '../job-file';
import type { AdhesiveLayout } from '../materials';
import type { Point } from '../panel';
import { intoRoom, movesOf, type Seat } from '../seat';
import type { BedReport, DotForce } from './report';

/** Cells between two dots, and how many there are at least and at most along a side of the sheet. */
const BETWEEN_DOTS = 2;
const CELLS = { least: 24, most: 40 };

/**
 * What each dot of adhesive has to hold once nothing else presses: the forces at the dots that keep the sheet where it sits
 * there, free between them and at its edges. A free sheet balances itself: pulls and pushes add up to nothing, and so do
 * their moments. Their ± is the survey's, the sheet touching where it touches.
 */
export function springBackOf(
  seat: Seat,
  name: WallName,
  covariance: Matrix,
  job: Job,
  adhesive: AdhesiveLayout,
): BedReport['springBack'] {
  const { spacing } = job.supplies.adhesive;
  const places = placesOf(adhesive, spacing).map(([u, v]) => ({ u, v }));
  if (places.length === 0 || (seat.how !== 'bent' && seat.how !== 'follows')) {
    return { dots: places.map((place) => ({ ...place, pull: 0, sd: 0 })), largest: null, total: 0, totalSd: 0 };
  }
  const { region, stiffness } = seat;
  const cells = ([from, to]: readonly [number, number]): number =>
    Math.min(CELLS.most, Math.max(CELLS.least, Math.ceil((BETWEEN_DOTS * (to - from)) / spacing)));
  const forcesAt = heldAt(splineGrid(region, cells(region.u), cells(region.v)), stiffness, places);
  const perDot = (heights: readonly number[]): Float64Array => forcesAt(heights).map((force) => -force);
  const { heights, moves } = dotHeights(seat, name, places);
  const pulls = perDot(heights);
  const changes = moves.of.map(([parameter, change]) => [parameter, perDot(change)] as const);
  const sdOf = (of: (perDot: Float64Array) => number): number => {
    const gradient = new Float64Array(moves.count);
    for (const [parameter, change] of changes) gradient[parameter] = of(change);
    return standardDeviation({ value: 0, gradient }, covariance);
  };
  const dots = places.map((place, k): DotForce => ({ ...place, pull: pulls[k]!, sd: sdOf((change) => change[k]!) }));
  const largest = dots.reduce<DotForce | null>((most, dot) => (dot.pull > (most?.pull ?? 0) ? dot : most), null);
  return {
    dots,
    largest,
    total: dots.reduce((sum, { pull }) => sum + Math.max(0, pull), 0),
    totalSd: sdOf((change) => change.reduce((sum, each, dot) => (pulls[dot]! > 0 ? sum + each : sum), 0)),
  };
}

/** How far into the room the sheet sits at the dots, mm, and how that moves with the alcove's parameters. */
function dotHeights(
  { pressed, region, surface, moves }: Seat,
  name: WallName,
  places: readonly { u: number; v: number }[],
) {
  const grid = pressed?.grid ?? splineGrid(region, CELLS.least, CELLS.least);
  const at = places.map(({ u, v }) => splineAt(grid, u, v, 0, 0));
  const height = intoRoom(surface, name);
  const sign = towardsRoom(name);
  const { count, of } = moves?.() ?? movesOf(surface, grid);
  return {
    heights: pressed ? at.map((sum) => sum(pressed.coefficients)) : places.map(({ u, v }) => height(u, v)),
    moves: { count, of: of.map(([parameter, move]) => [parameter, at.map((sum) => sign * sum(move))] as const) },
  };
}

/** Dots, or the middles of even stretches of beads. */
function placesOf({ dots, beads }: AdhesiveLayout, spacing: number): Point[] {
  return [
    ...dots,
    ...beads.flatMap(([[u, from], [, to]]) => {
      const count = Math.max(1, Math.round((to - from) / spacing));
      return Array.from({ length: count }, (_, k): Point => [u, from + ((k + 0.5) / count) * (to - from)]);
    }),
  ];
}

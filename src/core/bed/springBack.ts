import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { towardsRoom } from '../alcove';
import { centreOf, coefficientsOf, plateStencil, splineGrid, times } from '../contact';
import type { Job, WallName } from '../job-file';
import type { AdhesiveLayout } from '../materials';
import type { Point } from '../panel';
import { intoRoom, movesOf, type Seat } from '../seat';
import type { BedReport, DotForce } from './report';

const CELLS = 24;

/**
 * What each dot of adhesive has to hold once nothing else presses: the forces that keep the sheet in its shape, each
 * given to the dot nearest to it. A free sheet balances itself, so that pulls and pushes add up to nothing. Their ± is
 * the survey's, the sheet touching where it touches.
 */
export function springBackOf(
  seat: Seat,
  name: WallName,
  covariance: Matrix,
  job: Job,
  adhesive: AdhesiveLayout,
): BedReport['springBack'] {
  const places = placesOf(adhesive, job.supplies.adhesive.spacing).map(([u, v]) => ({ u, v }));
  if (places.length === 0 || (seat.how !== 'bent' && seat.how !== 'follows')) {
    return { dots: places.map((place) => ({ ...place, pull: 0, sd: 0 })), largest: null, total: 0, totalSd: 0 };
  }
  const { grid, forces, moves } = shapingForces(seat, name);
  const owner = forces.map((_, k) => nearest(places, ...centreOf(grid, k % grid.across, Math.floor(k / grid.across))));
  const perDot = (of: Float64Array): Float64Array => {
    const sums = new Float64Array(places.length);
    for (let k = 0; k < of.length; k++) sums[owner[k]!]! -= of[k]!;
    return sums;
  };
  const pulls = perDot(forces);
  const changes = moves.of.map(([parameter, change]) => [parameter, perDot(change)] as const);
  const sdOf = (share: (dot: number) => number): number => {
    const gradient = new Float64Array(moves.count);
    for (const [parameter, change] of changes) {
      gradient[parameter] = change.reduce((sum, each, dot) => sum + share(dot) * each, 0);
    }
    return standardDeviation({ value: 0, gradient }, covariance);
  };
  const dots = places.map(
    (place, k): DotForce => ({ ...place, pull: pulls[k]!, sd: sdOf((dot) => (dot === k ? 1 : 0)) }),
  );
  const largest = dots.reduce<DotForce | null>((most, dot) => (dot.pull > (most?.pull ?? 0) ? dot : most), null);
  return {
    dots,
    largest,
    total: dots.reduce((sum, { pull }) => sum + Math.max(0, pull), 0),
    totalSd: sdOf((dot) => (pulls[dot]! > 0 ? 1 : 0)),
  };
}

/** The force that each spline needs for the sheet to keep its shape, into the room positive, N, and how it moves. */
function shapingForces({ pressed, region, stiffness, surface, moves }: Seat, name: WallName) {
  const grid = pressed?.grid ?? splineGrid(region, CELLS, CELLS);
  const shape = pressed?.coefficients ?? coefficientsOf(grid, intoRoom(surface, name));
  const stencil = plateStencil(grid, stiffness);
  const forcesOf = (of: Float64Array): Float64Array => times(stencil, of, new Float64Array(of.length));
  const { count, of } = moves?.() ?? movesOf(surface, grid);
  const sign = towardsRoom(name);
  return {
    grid,
    forces: forcesOf(shape),
    moves: {
      count,
      of: of.map(([parameter, move]) => [parameter, forcesOf(move).map((force) => sign * force)] as const),
    },
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

function nearest(dots: readonly { u: number; v: number }[], u: number, v: number): number {
  let [best, least] = [0, Infinity];
  dots.forEach((dot, k) => {
    const square = (dot.u - u) ** 2 + (dot.v - v) ** 2;
    if (square < least) [best, least] = [k, square];
  });
  return best;
}

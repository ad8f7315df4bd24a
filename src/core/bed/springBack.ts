import { areasOf, centreOf, coefficientsOf, plateStencil, splineGrid, times } from '../contact';
import type { Job, WallName } from '../job-file';
import type { AdhesiveLayout } from '../materials';
import type { Point } from '../panel';
import { intoRoom, type Seat } from '../seat';
import type { BedReport } from './report';

const CELLS = 24;

/**
 * What each dot of adhesive has to hold once nothing else presses: the forces that keep the sheet in its shape, each
 * given to the dot nearest to it. A free sheet balances itself, so that pulls and pushes add up to nothing.
 */
export function springBackOf(seat: Seat, name: WallName, job: Job, adhesive: AdhesiveLayout): BedReport['springBack'] {
  const places = placesOf(adhesive, job.supplies.adhesive.spacing);
  const dots = places.map(([u, v]) => ({ u, v, pull: 0 }));
  const held = dots.length > 0 && (seat.how === 'bent' || seat.how === 'follows');
  if (held) {
    const { grid, forces } = shapingForces(seat, name);
    for (let k = 0; k < forces.length; k++) {
      const [u, v] = centreOf(grid, k % grid.across, Math.floor(k / grid.across));
      const dot = nearest(dots, u, v);
      dot.pull -= forces[k]!;
    }
  }
  const largest = dots.reduce<(typeof dots)[number] | null>(
    (most, dot) => (dot.pull > (most?.pull ?? 0) ? dot : most),
    null,
  );
  return { dots, largest, total: dots.reduce((sum, { pull }) => sum + Math.max(0, pull), 0) };
}

/** The force that each spline needs for the sheet to keep its shape, into the room positive, N. */
function shapingForces({ pressed, region, stiffness, surface }: Seat, name: WallName) {
  const grid = pressed?.grid ?? splineGrid(region, CELLS, CELLS);
  const shape = pressed?.coefficients ?? coefficientsOf(grid, intoRoom(surface, name));
  return { grid, forces: times(plateStencil(grid, stiffness), shape, new Float64Array(areasOf(grid).length)) };
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

function nearest<T extends { u: number; v: number }>(dots: readonly T[], u: number, v: number): T {
  let best = dots[0]!;
  let least = Infinity;
  for (const dot of dots) {
    const square = (dot.u - u) ** 2 + (dot.v - v) ** 2;
    if (square < least) [best, least] = [dot, square];
  }
  return best;
}

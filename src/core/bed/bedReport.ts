import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { type Alcove, towardsRoom } from '../alcove';
import { constant, type Dual, scale, subtract } from '../dual';
import type { Region } from '../flatten';
import type { Job } from '../job-file';
import type { AdhesiveLayout } from '../materials';
import type { Panel } from '../panel';
import { bedAt, bedWith, type Seat, type Seating } from '../seat';
import { contactsOf } from './contacts';
import { patchesBeyond } from './patches';
import type { BedReport, Convergence, PlaceOnBed } from './report';
import { shimsFor } from './shims';
import { springBackOf } from './springBack';
import { strainOf } from './strain';

/** Intervals of the map each way. */
const MAP_STEPS = 20;

/** How a panel's sheet sits on its wall: bed, contacts, hollows, strain, what the adhesive has to hold, shims. */
export function bedReport(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  { seats, sits }: Seating,
  panel: Panel,
  adhesive: AdhesiveLayout,
): BedReport {
  const { name } = panel;
  const seat = seats[name];
  const { region } = seat;
  const even = seat.how === 'follows';
  const exact = bedWith(alcove, sits, job, name);
  const bed = even ? () => job.fit.bed : bedAt(alcove, sits, job, name);
  const sdAt = (u: number, v: number): number => (even ? 0 : standardDeviation(exact(u, v), covariance));
  const map = mapOf(region, bed, sdAt);
  const lean = leanOf(seat, towardsRoom(name));
  return {
    how: seat.how,
    map,
    thinnest: extreme(map, (a, b) => a < b),
    thickest: extreme(map, (a, b) => a > b),
    lean: lean.value,
    leanSd: standardDeviation(lean, covariance),
    contacts: contactsOf(seat, job, map),
    reach: job.bedding.reach,
    hollows: patchesBeyond(region, bed, job.bedding.reach).map((patch) => ({ ...patch, sd: sdAt(patch.u, patch.v) })),
    strain: strainOf(seat, covariance, job),
    springBack: springBackOf(seat, name, covariance, job, adhesive),
    shims: shimsFor(alcove, covariance, job, panel, seat),
    convergence: convergenceOf(seat),
  };
}

function mapOf(
  { u, v }: Region,
  bed: (u: number, v: number) => number,
  sd: (u: number, v: number) => number,
): BedReport['map'] {
  const steps = ([from, to]: readonly [number, number]): number[] =>
    Array.from({ length: MAP_STEPS + 1 }, (_, k) => from + ((to - from) * k) / MAP_STEPS);
  const [at, height] = [steps(u), steps(v)];
  const over = (value: (u: number, v: number) => number): number[][] =>
    height.map((level) => at.map((along) => value(along, level)));
  return { at, height, value: over(bed), sd: over(sd) };
}

function extreme({ at, height, value, sd }: BedReport['map'], better: (a: number, b: number) => boolean): PlaceOnBed {
  let found: PlaceOnBed = { u: at[0]!, v: height[0]!, value: value[0]![0]!, sd: sd[0]![0]! };
  value.forEach((row, i) => {
    row.forEach((each, j) => {
      if (better(each, found.value)) found = { u: at[j]!, v: height[i]!, value: each, sd: sd[i]![j]! };
    });
  });
  return found;
}

/** Mean lean from bottom to top, mm per m, over five upright lines. */
function leanOf({ surface, region: { u, v } }: Seat, sign: 1 | -1): Dual {
  const lines = [0, 0.25, 0.5, 0.75, 1].map((share) => constant(u[0] + share * (u[1] - u[0])));
  const rises = lines.map((at) => subtract(surface.at(at, constant(v[1])), surface.at(at, constant(v[0]))));
  const sum = rises.reduce((total, rise) => subtract(total, scale(rise, -1)));
  return scale(sum, (sign * 1000) / (lines.length * (v[1] - v[0])));
}

function convergenceOf({ pressed }: Seat): Convergence | null {
  if (pressed === null) return null;
  const { grid, imbalance, converged, energies } = pressed;
  const [coarse, fine] = energies.slice(-2);
  return {
    columns: grid.columns,
    rows: grid.rows,
    steps: imbalance.length,
    imbalance: imbalance.at(-1)!,
    converged,
    energies: energies.slice(-2),
    energyChange: fine === undefined || fine.energy === 0 ? 0 : Math.abs((fine.energy - coarse!.energy) / fine.energy),
  };
}

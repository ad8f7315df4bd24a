import { type Alcove, towardsRoom, valuesOnly } from '../alcove';
import {
  type BendingStiffness,
  bendingStiffness,
  type Gripped,
  gripSheet,
  isRigid,
  orthotropic,
  type Supports,
} from '../contact';
import { constant } from '../dual';
import type { Region } from '../flatten';
import type { Job, WallName } from '../job-file';
import { panelRegion } from '../panel';
import type { Surface } from '../surface';
import { levelWeights, planeSeat, triangleWeights } from './planeSeat';
import { intoRoom, plumbPoints, restingPoints } from './resting';
import { type Moves, sheetMoves, splineSeat } from './splineSeat';

/** How a panel's sheet sits on its wall. */
export interface Seat {
  /** `follows`: on an even bed; `rigid`: on three points; `bent`: with least energy; `shimmed`: on shims, flat */
  how: 'follows' | 'rigid' | 'bent' | 'shimmed';
  /** what the sheet covers, wall coordinates */
  region: Region;
  /** where the back of the sheet stands, the even bed taken off, in the wall's own coordinates */
  surface: Surface;
  stiffness: BendingStiffness;
  /** the bent sheet's shape and balance */
  pressed: Gripped | null;
  /** how the bent sheet moves with the adjusted parameters */
  moves: (() => Moves) | null;
  /** the three points of a rigid sheet */
  supports: Supports | null;
}

/** How all three sheets sit, and what their edges are cut to. */
export interface Seating {
  seats: Record<WallName, Seat>;
  /** the alcove, its walls moved to where the sheets stand */
  sits: Alcove;
  /** the alcove, its walls moved to what edges are cut to */
  edges: Alcove;
}

/** Cells each way of the grid on which a sheet is bent: see tests/property/seating.test.ts for what a finer one changes. */
const CELLS = 24;
/** Share of the load that may be out of balance. */
const TOLERANCE = 1e-4;
/** An adhesive that is said to reach no further than the even bed still grips where the bed is no thicker than this more, mm. */
const LEAST_GRIP = 0.5;
/** N/m² in N/mm² */
const PASCAL = 1e-6;

export function seatPanels(alcove: Alcove, job: Job, cells = CELLS): Seating {
  const plain = valuesOnly(alcove);
  const seat = (name: WallName): Seat => seatOn(alcove[name], name, job, panelRegion(plain, job, name), cells);
  const seats = { back: seat('back'), left: seat('left'), right: seat('right') };
  const sits: Alcove = {
    ...alcove,
    back: seats.back.surface,
    left: seats.left.surface,
    right: seats.right.surface,
  };
  return { seats, sits, edges: job.bedding.edges === 'even' ? alcove : sits };
}

/** Bending stiffness of a panel: u runs along the wall, v up. */
const stiffnessOf = ({ fit, bedding: { modulusAcross, modulusUp, poisson } }: Job): BendingStiffness =>
  bendingStiffness(orthotropic(modulusAcross, modulusUp, poissonFor(poisson, modulusAcross, modulusUp), fit.thickness));

/** ν_uv ν_vu stays under 1 only while ν_uv² < E_u / E_v: held within, for sheets far stiffer up than across. */
const poissonFor = (poisson: number, across: number, up: number): number =>
  Math.min(poisson, 0.95 * Math.sqrt(across / up));

function seatOn(wall: Surface, name: WallName, job: Job, region: Region, cells: number): Seat {
  const { bedding, fit } = job;
  const stiffness = stiffnessOf(job);
  const common = { region, stiffness, pressed: null, moves: null, supports: null };
  const height = intoRoom(wall, name);
  if (bedding.edges === 'shimmed') return { ...common, how: 'shimmed', surface: shimPlane(wall, name, job, region) };
  if (fit.flexible) return { ...common, how: 'follows', surface: wall };
  const pressure = bedding.pressing * PASCAL;
  if (bedding.stiffness === 'rigid' || isRigid(stiffness, region, pressure)) {
    const supports = restingPoints(height, region);
    return { ...common, how: 'rigid', surface: planeOn(wall, supports), supports };
  }
  // The even bed is the least that is left between sheet and wall, and adhesive grips there; the reach is counted from the wall.
  const reach = Math.max(LEAST_GRIP, bedding.reach - fit.bed);
  const options = { columns: cells, rows: cells, tolerance: TOLERANCE };
  const pressed = gripSheet(height, region, stiffness, pressure, reach, options);
  const moves = sheetMoves(wall, pressed, stiffness);
  const surface = splineSeat(wall, towardsRoom(name), pressed, stiffness, moves);
  return { ...common, how: 'bent', surface, pressed, moves };
}

const planeOn = (wall: Surface, supports: Supports): Surface => {
  const places = supports.map(([u, v]) => [u, v] as const);
  return planeSeat(
    triangleWeights(places),
    places.map(([u, v]) => wall.at(constant(u), constant(v))),
  );
};

/** The plane that shims bring a sheet to, touching the wall's high points. */
export function shimPlane(wall: Surface, name: WallName, { bedding }: Job, region: Region): Surface {
  const height = intoRoom(wall, name);
  if (bedding.shimTo === 'flat') return planeOn(wall, restingPoints(height, region));
  const places = plumbPoints(height, region);
  const [low, high] = places as [[number, number], [number, number]];
  return planeSeat(
    levelWeights(low[0], high[0]),
    places.map(([u, v]) => wall.at(constant(u), constant(v))),
  );
}

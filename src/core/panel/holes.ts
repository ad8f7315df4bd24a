import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { type Alcove, towardsRoom } from '../alcove';
import { add, constant, type Dual, fixedPoint, scale, shift, subtract } from '../dual';
import type { FlatMap } from '../flatten';
import type { Fixture, Job } from '../job-file';
import { contourRise } from './contour';
import { distanceToOutline } from './outline';
import type { PanelHole, PanelName, Point } from './panel';

/** The holes of the fixtures on a panel, on the wall and on the sheet. */
export function panelHoles(
  alcove: Alcove,
  seats: Alcove,
  covariance: Matrix,
  job: Job,
  name: PanelName,
  flat: FlatMap,
  flatOutline: readonly Point[],
): PanelHole[] {
  return job.fixtures
    .filter(({ wall }) => wall === name)
    .map((fixture) => {
      const { u, v } = holeCentre(alcove, job, fixture, seats);
      const sheet = flat.toSheet(u.value, v.value);
      return {
        id: fixture.id,
        kind: fixture.kind,
        u: u.value,
        v: v.value,
        sheet,
        diameter: fixture.hole,
        sd: { u: standardDeviation(u, covariance), v: standardDeviation(v, covariance) },
        aboveRim: fixture.aboveRim,
        from: measuredFrom(fixture),
        edgeDistance: distanceToOutline(sheet, flatOutline) - fixture.hole / 2,
      };
    });
}

/**
 * Centre of a fixture's hole at the panel's face, in wall coordinates: straight up from the finished rim under it, and
 * out from the back, both where they were taken. From the bare wall a pipe goes on square to the wall to the panel's face.
 */
export function holeCentre(alcove: Alcove, job: Job, fixture: Fixture, seats = alcove): { u: Dual; v: Dual } {
  const { fit } = job;
  if (fixture.takenAt !== 'wall') return centreAt(alcove, job, fixture, fit.bed + fit.thickness, seats);
  const { u, v } = centreAt(alcove, job, fixture, 0, alcove);
  const stands =
    towardsRoom(fixture.wall) *
    (seats[fixture.wall].value(u.value, v.value) - alcove[fixture.wall].value(u.value, v.value));
  const face = fit.bed + fit.thickness + stands;
  const [alongU, alongV] = leans(alcove, fixture.wall, u, v);
  const out = face / Math.sqrt(1 + alongU.value ** 2 + alongV.value ** 2);
  return { u: add(u, scale(alongU, -out)), v: add(v, scale(alongV, -out)) };
}

/** A wall's lean is taken over this on either side, mm. */
const LEAN_REACH = 10;

/** How a wall's height into the room grows along u and along v, by differences. */
function leans(alcove: Alcove, name: PanelName, u: Dual, v: Dual): [Dual, Dual] {
  const slope = (high: Dual, low: Dual): Dual => scale(subtract(high, low), towardsRoom(name) / (2 * LEAN_REACH));
  const wall = alcove[name];
  return [
    slope(wall.at(shift(u, LEAN_REACH), v), wall.at(shift(u, -LEAN_REACH), v)),
    slope(wall.at(u, shift(v, LEAN_REACH)), wall.at(u, shift(v, -LEAN_REACH))),
  ];
}

/** Where both distances lie at so much, mm, off what the panel stands on, or off the bare wall. */
function centreAt(
  alcove: Alcove,
  { fit, rim }: Job,
  fixture: Fixture,
  face: number,
  seats: Alcove,
): { u: Dual; v: Dual } {
  const overRim = (x: Dual, z: Dual): Dual => shift(add(alcove.rim.at(x, z), contourRise(rim, z)), fixture.aboveRim);
  const start = alcove.rim.value(0, 0) + fixture.aboveRim;

  if (fixture.wall === 'back') {
    const u = constant(fixture.fromPlumbLine);
    return { u, v: fixedPoint((v) => overRim(u, shift(seats.back.at(u, v), face)), start) };
  }
  const wall = seats[fixture.wall];
  const inward = towardsRoom(fixture.wall) * face;
  const ofPanel = fixture.fromBackOf === 'panel';
  const fromWall = (ofPanel ? fit.bed + fit.thickness : 0) + fixture.fromBack;
  const back = ofPanel ? seats.back : alcove.back;
  const faceX = (u: Dual, v: Dual): Dual => shift(wall.at(u, v), inward);
  const outAt = (v: Dual): Dual => fixedPoint((u) => shift(back.at(faceX(u, v), v), fromWall), fromWall);
  const v = fixedPoint((v) => {
    const u = outAt(v);
    return overRim(faceX(u, v), u);
  }, start);
  return { u: outAt(v), v };
}

const measuredFrom = (fixture: Fixture): PanelHole['from'] =>
  fixture.wall === 'back'
    ? { of: 'plumb-line', distance: fixture.fromPlumbLine }
    : { of: fixture.fromBackOf, distance: fixture.fromBack };

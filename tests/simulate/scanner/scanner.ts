import type { PointCloud } from '../../../src/core/scan';
import type { Point3 } from '../points';
import { type Random, randomFrom } from '../random';
import { firstHit, type Scene } from './scene';

/** How a scanner errs. Lengths in mm, 1 sigma where it is a spread. */
export interface ScannerErrors {
  /** spread of a single range */
  noise: number;
  /** added to every range */
  bias: number;
  /** what the cloud's scale is wrong by, such as 0.002 for 2 mm per m too long */
  scale: number;
  /** the beam's width, mm at 1 m: near an edge it meets both surfaces and gives a range between them */
  beam: number;
  /** share of points lost at right incidence; at grazing incidence most are */
  dropOut: number;
  /** how far each place that it was held at is turned and moved against the others: mm per m and mm */
  drift: { turn: number; move: number };
  /** how far the cloud's up leans from the true one, mm per m, about x and about z */
  tilt: [number, number];
}

export const NO_ERRORS: ScannerErrors = {
  noise: 0,
  bias: 0,
  scale: 0,
  beam: 0,
  dropOut: 0,
  drift: { turn: 0, move: 0 },
  tilt: [0, 0],
};

export interface ScanOrder {
  points: number;
  seed: number;
  errors: ScannerErrors;
  /** where it is held, in the alcove's frame */
  stations: Point3[];
  /** the cloud's frame against the alcove's: turned about the upright, radians, and moved, mm */
  yaw?: number;
  shift?: Point3;
  /** share of points on what stands about; unless given, what the scene has */
  clutterShare?: number;
  /** points to each ray, with ranges of their own: for many points soon; 1 unless given */
  perRay?: number;
}

export interface SimulatedScan {
  cloud: PointCloud;
  /** 1 for a point of a wall, the rim or the wall beside the opening; 0 for all else, mixed points among them */
  wanted: Uint8Array;
}

const STATIONS: Point3[] = [
  [-250, 150, 1150],
  [260, 350, 1050],
  [0, -150, 1350],
];
export const usualStations = (): Point3[] => STATIONS.map((each) => [...each]);

/** A cloud of exactly so many points of a scene. */
export function scanOf(scene: Scene, order: ScanOrder): SimulatedScan {
  const random = randomFrom(order.seed);
  const { errors, points, perRay = 1 } = order;
  const stations = order.stations.map((at) => ({ at, error: motion(random, errors.drift) }));
  const placed = placement(order);
  const positions = new Float32Array(3 * points);
  const wanted = new Uint8Array(points);
  const clutterQuota = order.clutterShare === undefined ? null : Math.round(points * order.clutterShare);
  let [filled, clutter] = [0, 0];
  for (let tries = 0; filled < points; tries++) {
    if (tries > 100 * points + 1000) throw new Error('the scene gives too few points of the kind asked for');
    const { at, error } = stations[tries % stations.length]!;
    const direction = aimed(random);
    const hit = firstHit(scene, at, direction);
    if (hit === null) continue;
    const isClutter = hit.part === 'clutter';
    if (clutterQuota !== null && (isClutter ? clutter >= clutterQuota : filled - clutter >= points - clutterQuota))
      continue;
    if (random.between(0, 1) < 1 - (1 - errors.dropOut) * Math.min(1, 0.15 + 2.5 * hit.incidence)) continue;
    const mixed = mixedRange(scene, at, direction, hit.range, errors.beam, random);
    for (let k = 0; k < perRay && filled < points; k++) {
      const range = (mixed ?? hit.range) + errors.bias + (errors.noise === 0 ? 0 : random.normal(0, errors.noise));
      const p = error([at[0] + range * direction[0], at[1] + range * direction[1], at[2] + range * direction[2]]);
      positions.set(placed(p), 3 * filled);
      wanted[filled] = hit.part === 'alcove' && mixed === null ? 1 : 0;
      filled++;
      if (isClutter) clutter++;
    }
  }
  return { cloud: { positions, origin: [0, 0, 0] }, wanted };
}

/** Evenly over the sphere, the half towards the alcove mostly. */
function aimed(random: Random): Point3 {
  for (;;) {
    const d: Point3 = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 0.35)];
    const length = Math.hypot(...d);
    if (length > 0.1 && length <= 1) return [d[0] / length, d[1] / length, d[2] / length];
  }
}

/** Between two surfaces when the beam meets both; one beam in four is wide enough to show it. */
function mixedRange(
  scene: Scene,
  at: Point3,
  direction: Point3,
  range: number,
  beam: number,
  random: Random,
): number | null {
  if (beam === 0 || random.between(0, 1) > 0.25) return null;
  const spread = beam / 1000;
  const beside = direction.map((each) => each + random.normal(0, spread)) as Point3;
  const length = Math.hypot(...beside);
  const other = firstHit(scene, at, beside.map((each) => each / length) as Point3);
  if (other === null || Math.abs(other.range - range) < 15) return null;
  return range + random.between(0.1, 0.9) * (other.range - range);
}

function motion(random: Random, { turn, move }: ScannerErrors['drift']): (p: Point3) => Point3 {
  if (turn === 0 && move === 0) return (p) => p;
  const [a, b, c] = [0, 0, 0].map(() => random.normal(0, turn / 1000)) as Point3;
  const [x, y, z] = [0, 0, 0].map(() => random.normal(0, move)) as Point3;
  return (p) => [p[0] - c * p[1] + b * p[2] + x, p[1] + c * p[0] - a * p[2] + y, p[2] - b * p[0] + a * p[1] + z];
}

function placement({ yaw = 0, shift = [0, 0, 0], errors }: ScanOrder): (p: Point3) => Point3 {
  const [cos, sin] = [Math.cos(yaw), Math.sin(yaw)];
  const [a, b] = [Math.atan(errors.tilt[0] / 1000), Math.atan(errors.tilt[1] / 1000)];
  const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
  const scale = 1 + errors.scale;
  return ([x, y, z]) => {
    const [y1, z1] = [ca * y - sa * z, sa * y + ca * z];
    const [x2, y2] = [cb * x - sb * y1, sb * x + cb * y1];
    return [scale * (cos * x2 + sin * z1) + shift[0], scale * y2 + shift[1], scale * (cos * z1 - sin * x2) + shift[2]];
  };
}

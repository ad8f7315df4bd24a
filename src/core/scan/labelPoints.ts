import type { PointCloud } from './cloud';
import { type Field, fieldAt } from './field';
import { LABEL } from './labels';
import type { Flank } from './opening';
import type { RigidFrame, Rows } from './rigidFrame';
import type { Surfaces } from './surfaces';

/** What stands in the scan, in the job's frame. */
export interface Found extends Surfaces {
  flank: { left: Flank | null; right: Flank | null };
  /** how far out the side walls reach where no flank tells, mm */
  depth: number;
}

/** Points belong to a surface within so many spreads of it and a little for its unevenness, mm, neither too few nor many. */
const reach = (noise: number): number => Math.min(22, Math.max(10, 4 * noise + 5));
/** Points are labelled in runs of this many, between which progress is told and a cancel is heard. */
export const RUN = 1 << 18;

/**
 * Labels the points `from` to `to`: the nearest surface within reach of those that a point can belong to, else clutter
 * inside the alcove, else unknown.
 */
export function labelPoints(
  { positions }: PointCloud,
  { rotation, translation: [tx, ty, tz] }: RigidFrame,
  found: Found,
  labels: Uint8Array,
  from: number,
  to: number,
): void {
  const [r0, r1, r2, r3, r4, r5, r6, r7, r8] = rotation as unknown as Rows;
  const { back, left, right, rim, floor, ceiling, flank, depth } = found;
  const [reachBack, reachLeft, reachRight] = [reach(back.noise), reach(left.noise), reach(right.noise)];
  const reachRim = rim === null ? 0 : reach(rim.noise);
  const [b, l, ri] = [back.field, left.field, right.field];
  const m = rim?.field ?? null;
  const top = (ceiling ?? 1e9) - 20;
  const floorAt = floor ?? -1e9;
  const lowest = floorAt - 25;
  const far = depth + 1500;
  const { x0, x1, y0, y1, z0, z1 } = clearOfAll(found);
  for (let i = from; i < to; i++) {
    const px = positions[3 * i]!;
    const py = positions[3 * i + 1]!;
    const pz = positions[3 * i + 2]!;
    const x = r0 * px + r1 * py + r2 * pz + tx;
    const y = r3 * px + r4 * py + r5 * pz + ty;
    const z = r6 * px + r7 * py + r8 * pz + tz;
    if (x > x0 && x < x1 && y > y0 && y < y1 && z > z0 && z < z1) {
      labels[i] = LABEL.clutter;
      continue;
    }
    if (!(z > -40 && z < far && y > lowest)) {
      labels[i] = LABEL.unknown;
      continue;
    }
    if (z > depth - 100 && Math.abs(y - floorAt) < 20) {
      labels[i] = LABEL.floor;
      continue;
    }
    if (y > top) {
      labels[i] = LABEL.unknown;
      continue;
    }
    const fromLeft = x - fieldAt(l, z, y);
    const fromRight = fieldAt(ri, z, y) - x;
    const atLeft = fromLeft < fromRight;
    const fromSide = atLeft ? fromLeft : fromRight;
    const reachSide = atLeft ? reachLeft : reachRight;
    const beside = atLeft ? flank.left : flank.right;
    const front = beside === null ? depth + 15 : fieldAt(beside.field, x, y);
    if (fromSide < -8 && beside !== null && Math.abs(z - front) < 15) {
      labels[i] = LABEL.front;
      continue;
    }
    if (fromSide < -reachSide || z > front + 400) {
      labels[i] = LABEL.unknown;
      continue;
    }
    const fromBack = z - fieldAt(b, x, y);
    const aboveRim = m === null ? 1e9 : y - fieldAt(m, x, z);
    if (fromBack < -reachBack || aboveRim < -reachRim) {
      labels[i] = LABEL.unknown;
      continue;
    }
    const offBack = Math.abs(fromBack);
    const offSide = Math.abs(fromSide);
    const offRim = Math.abs(aboveRim);
    let label: number = LABEL.clutter;
    let least = 1e9;
    if (offBack < reachBack) {
      label = LABEL.back;
      least = offBack;
    }
    if (offSide < reachSide && offSide < least && z < front + 5) {
      label = atLeft ? LABEL.left : LABEL.right;
      least = offSide;
    }
    if (offRim < reachRim && offRim < least && z < depth + 60) label = LABEL.rim;
    labels[i] = label;
  }
}

/** Heights and depths that bounds of the fields are taken over, mm. */
const [LOWEST, HIGHEST] = [-2500, 2500];

/** A box in the alcove so far from all its surfaces that what lies in it is clutter, whatever their shape. */
function clearOfAll({ back, left, right, rim, floor, ceiling, flank, depth }: Found) {
  const high = Math.min(HIGHEST, (ceiling ?? HIGHEST) - 20);
  const low = Math.max(LOWEST, (floor ?? LOWEST) + 25);
  const wide: Range = [fieldAt(left.field, 0, 0) - 100, fieldAt(right.field, 0, 0) + 100];
  const out: Range = [0, depth + 100];
  const upright: Range = [low, high];
  const fronts = [flank.left, flank.right].map((each) => (each === null ? depth : least(each.field, wide, upright)));
  return {
    x0: -least(negated(left.field), out, upright) + reach(left.noise),
    x1: least(right.field, out, upright) - reach(right.noise),
    y0: rim === null ? low : Math.max(low, -least(negated(rim.field), wide, out) + reach(rim.noise)),
    y1: high,
    z0: -least(negated(back.field), wide, upright) + reach(back.noise),
    z1: Math.min(depth, ...fronts) - 5,
  };
}

type Range = readonly [number, number];

const negated = (c: Field): Field => c.map((each) => -each);

/** A bound below a field over a stretch of its two places, from each of its terms alone. */
function least(c: Field, a: Range, b: Range): number {
  const [u, v] = [Math.max(-a[0], a[1]) * 1e-3, Math.max(-b[0], b[1]) * 1e-3];
  const slopes = Math.min(c[1]! * a[0], c[1]! * a[1]) + Math.min(c[2]! * b[0], c[2]! * b[1]);
  const bows = Math.min(0, c[4]!) * u * u + Math.min(0, c[5]!) * v * v - Math.abs(c[3]!) * u * v;
  return 1e3 * (c[0]! + bows) + slopes;
}

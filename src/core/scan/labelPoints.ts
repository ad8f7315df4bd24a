import type { PointCloud } from './cloud';
import { fieldAt } from './field';
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
  cloud: PointCloud,
  { rotation: r, translation: t }: RigidFrame,
  found: Found,
  labels: Uint8Array,
  from: number,
  to: number,
): void {
  const { positions } = cloud;
  const [r0, r1, r2, r3, r4, r5, r6, r7, r8] = r as unknown as Rows;
  const [tx, ty, tz] = t;
  const { back, left, right, rim, floor, ceiling, flank, depth } = found;
  const [reachBack, reachLeft, reachRight] = [reach(back.noise), reach(left.noise), reach(right.noise)];
  const reachRim = rim === null ? 0 : reach(rim.noise);
  const [b, l, ri] = [back.field, left.field, right.field];
  const m = rim?.field ?? null;
  const top = (ceiling ?? 1e9) - 20;
  const lowest = floor === null ? -1e9 : floor - 25;
  const far = depth + 1500;
  for (let i = from; i < to; i++) {
    const [px, py, pz] = [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!];
    const x = r0 * px + r1 * py + r2 * pz + tx;
    const y = r3 * px + r4 * py + r5 * pz + ty;
    const z = r6 * px + r7 * py + r8 * pz + tz;
    if (!(z > -40 && z < far && y > lowest)) {
      labels[i] = LABEL.unknown;
      continue;
    }
    if (floor !== null && z > depth - 100 && Math.abs(y - floor) < 20) {
      labels[i] = LABEL.floor;
      continue;
    }
    if (y > top) {
      labels[i] = LABEL.unknown;
      continue;
    }
    const fromLeft = x - fieldAt(l, z, y);
    const fromRight = fieldAt(ri, z, y) - x;
    const side = fromLeft < fromRight ? 'left' : 'right';
    const fromSide = side === 'left' ? fromLeft : fromRight;
    const reachSide = side === 'left' ? reachLeft : reachRight;
    const beside = flank[side];
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
    if (fromBack < -reachBack || (aboveRim < -reachRim && m !== null)) {
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
      label = side === 'left' ? LABEL.left : LABEL.right;
      least = offSide;
    }
    if (offRim < reachRim && offRim < least && z < depth + 60) label = LABEL.rim;
    labels[i] = label;
  }
}

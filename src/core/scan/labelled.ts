import { AXES, isSurfaceName, SURFACE_NAMES, type SurfaceName } from './axes';
import { type PointCloud, pointCount } from './cloud';
import { consensusPlane } from './consensus';
import { addHeight, type Heights, roomForHeights } from './heights';
import { LABEL, LABEL_NAMES } from './labels';
import type { RigidFrame, Rows } from './rigidFrame';
import { type RobustField, robustField } from './robustField';
import { lehmer } from './sample';

/** Points of a surface that its first shape is taken from, and of the walls beside the opening. */
const MOST = 12_000;
const MOST_FRONT = 60_000;
const LEAST = 60;

/** Points of a surface or of the walls beside the opening, as heights in the frame. */
export type SomeOfEach = Partial<Record<SurfaceName | 'front', Heights>>;

/** Of each label, by its number, the surface that its points are heights of. */
const NAMES = LABEL_NAMES.map((name) => (name === 'front' || isSurfaceName(name) ? name : null));
const AXES_OF = NAMES.map((name) => (name === null || name === 'front' ? ([0, 1, 2] as const) : AXES[name]));

/** A robust quadratic shape for each surface that has points of its label; labels may have been mended by hand. */
export function labelledFields(some: SomeOfEach): Partial<Record<SurfaceName, RobustField>> {
  const random = lehmer(1);
  const fields: Partial<Record<SurfaceName, RobustField>> = {};
  for (const name of SURFACE_NAMES) {
    const heights = some[name];
    if (heights === undefined || heights.count < LEAST) continue;
    const start = consensusPlane(heights, name === 'right' ? 1 : -1, random);
    const fitted = start && robustField(heights, { start, within: [30, 20, 15, 12], bowSd: name === 'rim' ? 8 : 20 });
    if (fitted) fields[name] = fitted;
  }
  return fields;
}

/** Points of each label in all. */
export function labelTotals(labels: Uint8Array): Int32Array {
  const totals = new Int32Array(256);
  for (let i = 0; i < labels.length; i++) totals[labels[i]!]!++;
  return totals.subarray(0, NAMES.length);
}

/** No more than MOST points of each surface, evenly through the cloud, in the frame. */
export function someOfEach(
  cloud: PointCloud,
  labels: Uint8Array,
  { rotation, translation: [tx, ty, tz] }: RigidFrame,
  totals: Int32Array,
): SomeOfEach {
  const [r0, r1, r2, r3, r4, r5, r6, r7, r8] = rotation as unknown as Rows;
  const { positions } = cloud;
  const steps = Array.from(totals, (total, label) => Math.ceil(total / (label === LABEL.front ? MOST_FRONT : MOST)));
  const some = NAMES.map((name, label) =>
    name === null ? null : roomForHeights(Math.ceil(totals[label]! / (steps[label]! || 1))),
  );
  const left = new Int32Array(NAMES.length).fill(1);
  const place = [0, 0, 0];
  const count = pointCount(cloud);
  for (let i = 0; i < count; i++) {
    const label = labels[i]!;
    if (label < LABEL.rim || label > LABEL.front || --left[label]! > 0) continue;
    left[label] = steps[label]!;
    const px = positions[3 * i]!;
    const py = positions[3 * i + 1]!;
    const pz = positions[3 * i + 2]!;
    place[0] = r0 * px + r1 * py + r2 * pz + tx;
    place[1] = r3 * px + r4 * py + r5 * pz + ty;
    place[2] = r6 * px + r7 * py + r8 * pz + tz;
    const axes = AXES_OF[label]!;
    addHeight(some[label]!, place[axes[0]]!, place[axes[1]]!, place[axes[2]]!);
  }
  return Object.fromEntries(NAMES.flatMap((name, label) => (name === null ? [] : [[name, some[label]]])));
}

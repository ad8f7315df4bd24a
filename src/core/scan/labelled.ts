import { AXES, SURFACE_NAMES, type SurfaceName } from './axes';
import { type PointCloud, pointCount } from './cloud';
import { consensusPlane } from './consensus';
import { type RobustField, robustField } from './field';
import { LABEL } from './labels';
import { moved, type RigidFrame } from './rigidFrame';
import { lehmer } from './sample';

/** Points of a label that its first shape is taken from. */
const MOST = 12_000;
const FOR_CONSENSUS = 1500;
const LEAST = 60;

/** A robust quadratic shape for each surface that has points of its label; labels may have been mended by hand. */
export function labelledFields(
  cloud: PointCloud,
  labels: Uint8Array,
  frame: RigidFrame,
): Partial<Record<SurfaceName, RobustField>> {
  const some = someOfEach(cloud, labels, frame);
  const random = lehmer(1);
  const fields: Partial<Record<SurfaceName, RobustField>> = {};
  for (const name of SURFACE_NAMES) {
    const points = some[LABEL[name]]!;
    if (points.length < LEAST) continue;
    const [i, j, k] = AXES[name];
    const [a, b, h] = [i, j, k].map((axis) => points.map((p) => p[axis]!)) as [number[], number[], number[]];
    const few = [a, b, h].map((each) => every(each, Math.ceil(each.length / FOR_CONSENSUS))) as [
      number[],
      number[],
      number[],
    ];
    const start = consensusPlane(few[0], few[1], few[2], name === 'right' ? 1 : -1, random);
    const fitted = start && robustField(a, b, h, { start, within: [30, 20, 15, 12], bowSd: name === 'rim' ? 8 : 20 });
    if (fitted) fields[name] = fitted;
  }
  return fields;
}

const every = (values: number[], step: number): number[] => values.filter((_, i) => i % step === 0);

/** Up to MOST points of each label, evenly through the cloud, in the frame. */
function someOfEach(cloud: PointCloud, labels: Uint8Array, frame: RigidFrame): [number, number, number][][] {
  const count = pointCount(cloud);
  const totals = new Int32Array(8);
  for (let i = 0; i < count; i++) totals[labels[i]! & 7]!++;
  const steps = Array.from(totals, (total) => Math.max(1, Math.ceil(total / MOST)));
  const seen = new Int32Array(8);
  const some: [number, number, number][][] = Array.from({ length: 8 }, () => []);
  const { positions } = cloud;
  for (let i = 0; i < count; i++) {
    const label = labels[i]! & 7;
    if (label < LABEL.rim || label > LABEL.front || seen[label]!++ % steps[label]! !== 0) continue;
    some[label]!.push(moved(frame, [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!]));
  }
  return some;
}

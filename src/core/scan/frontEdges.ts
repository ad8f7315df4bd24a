import type { Scan } from '../job-file';
import type { SurfaceName } from './axes';
import { type PointCloud, pointCount } from './cloud';
import { fieldAt, median, type RobustField, robustField } from './field';
import { LABEL } from './labels';
import { moved, type RigidFrame } from './rigidFrame';

/** Heights are taken together over this much, mm. */
const STRETCH = 80;
/** Points of the wall beside the opening count from where its corner is no longer round to so far from it, mm. */
const BEYOND = [10, 220] as const;
const LEAST_POINTS = 12;
const MOST_POINTS = 60_000;
/** A drywall corner is no sharper than this, mm (common practice, no source). */
const CORNER_SD = 1;
/** An edge that shows over less height than this is none, mm. */
const LEAST_HEIGHT = 400;

/**
 * Front edges: where the wall beside the opening, carried on, meets the side wall, at even heights. The wall beside must
 * show; where the scan merely ends there is no edge.
 */
export function frontEdges(
  cloud: PointCloud,
  labels: Uint8Array,
  frame: RigidFrame,
  fields: Partial<Record<SurfaceName, RobustField>>,
): Scan['front'] {
  const edge = (side: 'left' | 'right'): Scan['front']['left'] => {
    const wall = fields[side];
    return wall === undefined ? [] : edgeOf(flankPoints(cloud, labels, frame, wall, side), wall);
  };
  return { left: edge('left'), right: edge('right') };
}

function flankPoints(
  cloud: PointCloud,
  labels: Uint8Array,
  frame: RigidFrame,
  wall: RobustField,
  side: 'left' | 'right',
): [number, number, number][] {
  const { positions } = cloud;
  const count = pointCount(cloud);
  let fronts = 0;
  for (let i = 0; i < count; i++) if (labels[i] === LABEL.front) fronts++;
  const step = Math.max(1, Math.floor(fronts / MOST_POINTS));
  const outward = side === 'left' ? -1 : 1;
  const points: [number, number, number][] = [];
  let seen = 0;
  for (let i = 0; i < count; i++) {
    if (labels[i] !== LABEL.front || seen++ % step !== 0) continue;
    const p = moved(frame, [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!]);
    const beyond = outward * (p[0] - fieldAt(wall.field, p[2], p[1]));
    if (beyond > BEYOND[0] && beyond < BEYOND[1]) points.push(p);
  }
  return points;
}

function edgeOf(points: [number, number, number][], wall: RobustField): Scan['front']['left'] {
  if (points.length < 5 * LEAST_POINTS) return [];
  const [x, y, z] = [0, 1, 2].map((k) => points.map((p) => p[k]!)) as [number[], number[], number[]];
  const start = Float64Array.of(median(z) * 1e-3, 0, 0, 0, 0, 0);
  const flank = robustField(x, y, z, { start, within: [60, 30, 15, 12], bowSd: 3 });
  if (flank === null) return [];
  const stretches = new Map<number, number[]>();
  points.forEach(([px, py, pz]) => {
    const off = pz - fieldAt(flank.field, px, py);
    if (Math.abs(off) > 3 * flank.noise + 1) return;
    const k = Math.floor(py / STRETCH);
    const held = stretches.get(k);
    if (held === undefined) stretches.set(k, [off]);
    else held.push(off);
  });
  const edge = [...stretches]
    .filter(([, off]) => off.length >= LEAST_POINTS)
    .sort(([a], [b]) => a - b)
    .map(([k, off]) => {
      const height = (k + 0.5) * STRETCH;
      const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
      const at = (out: number): number => fieldAt(flank.field, fieldAt(wall.field, out, height), height);
      const value = at(at(flank.field[0]! * 1e3)) + mean;
      const sd = Math.hypot(CORNER_SD, flank.noise / Math.sqrt(off.length));
      return { height, value: Number(value.toFixed(2)), sd: Number(sd.toFixed(3)) };
    });
  const shown = edge.length === 0 ? 0 : edge.at(-1)!.height - edge[0]!.height;
  return shown < LEAST_HEIGHT ? [] : edge;
}

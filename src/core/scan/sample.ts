import type { PointCloud } from './cloud';
import { pointCount } from './cloud';

/** Points looked at to find the surfaces; more sharpen nothing that the labels, taken from all points, do not. */
const MOST = 120_000;
/** Farther from the origin than this no point of a room lies, mm. */
const FARTHEST = 1e5;

/**
 * Every k-th point on average, one drawn at random from each run of k, so that a scanner's own rhythm does not show;
 * points that are no numbers are left out.
 */
export function sampleOf(cloud: PointCloud, seed: number): Float64Array {
  const { positions } = cloud;
  const count = pointCount(cloud);
  const run = Math.max(1, count / MOST);
  const sample = new Float64Array(3 * Math.min(count, Math.ceil(count / run)));
  const random = lehmer(seed);
  let filled = 0;
  for (let start = 0; start < count && filled < sample.length; start += run) {
    const i = 3 * Math.min(count - 1, Math.floor(start + (run === 1 ? 0 : random() * run)));
    const x = positions[i]!;
    const y = positions[i + 1]!;
    const z = positions[i + 2]!;
    if (!(Math.abs(x) < FARTHEST && Math.abs(y) < FARTHEST && Math.abs(z) < FARTHEST)) continue;
    sample[filled++] = x;
    sample[filled++] = y;
    sample[filled++] = z;
  }
  return sample.subarray(0, filled);
}

/** Park and Miller's minimal standard generator (1988), in [0, 1). */
export function lehmer(seed: number): () => number {
  let state = (Math.abs(Math.floor(seed)) % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
}

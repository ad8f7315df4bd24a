/** Some points that hang together. */
export interface Cluster {
  /** numbers of its points, going up */
  points: Uint32Array;
  /** corners of the box that holds it, mm */
  low: [number, number, number];
  high: [number, number, number];
}

/** Points in cubes that touch hang together, mm. */
const cube = 40;
const reach = 1024;

/**
 * Parts points into clusters, largest first: points whose cubes touch, by face, edge or corner, are of one.
 * @param positions x y z of each point of the scan, mm
 * @param points numbers of those to part, going up
 * @param most how many clusters are given at most
 */
export function clustersOf(positions: Float32Array, points: Uint32Array, most = 12): Cluster[] {
  const clusterOfCube = new Map<number, number>();
  const keyOf = (point: number): number => {
    const [x, y, z] = [0, 1, 2].map((axis) =>
      Math.min(2 * reach - 2, Math.max(1, Math.floor(positions[3 * point + axis]! / cube) + reach)),
    ) as [number, number, number];
    return (x * 2 * reach + y) * 2 * reach + z;
  };
  const keys = Float64Array.from(points, keyOf);
  for (const key of keys) clusterOfCube.set(key, -1);
  let clusters = 0;
  for (const start of clusterOfCube.keys()) {
    if (clusterOfCube.get(start) !== -1) continue;
    const open = [start];
    clusterOfCube.set(start, clusters);
    for (let key = open.pop(); key !== undefined; key = open.pop()) {
      for (const step of steps) {
        if (clusterOfCube.get(key + step) !== -1) continue;
        clusterOfCube.set(key + step, clusters);
        open.push(key + step);
      }
    }
    clusters++;
  }
  const counts = new Uint32Array(clusters);
  const members = Uint32Array.from(keys, (key) => clusterOfCube.get(key)!);
  for (const cluster of members) counts[cluster]!++;
  const largest = Array.from(counts.keys())
    .sort((a, b) => counts[b]! - counts[a]! || a - b)
    .slice(0, most);
  return largest.map((cluster) =>
    clusterAt(
      positions,
      points.filter((_, i) => members[i] === cluster),
    ),
  );
}

/** From a cube's key to those of the 26 around it. */
const steps = [-1, 0, 1]
  .flatMap((x) => [-1, 0, 1].flatMap((y) => [-1, 0, 1].map((z) => (x * 2 * reach + y) * 2 * reach + z)))
  .filter((step) => step !== 0);

function clusterAt(positions: Float32Array, points: Uint32Array): Cluster {
  const low: Cluster['low'] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high: Cluster['high'] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const point of points) {
    for (const axis of [0, 1, 2] as const) {
      const value = positions[3 * point + axis]!;
      if (value < low[axis]) low[axis] = value;
      if (value > high[axis]) high[axis] = value;
    }
  }
  return { points, low, high };
}

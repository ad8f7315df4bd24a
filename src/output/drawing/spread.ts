interface Cluster {
  from: number;
  to: number;
  /** sum of the wanted start positions, each less the offset in the cluster */
  sum: number;
  start: number;
}

/**
 * Moves labels along a line so that none overlap, each as near as possible to where it is wanted (least squares,
 * by pooling neighbours that collide).
 * @param wanted centres wanted, in any order, mm
 * @param size room that each label takes along the line, mm
 * @param range labels stay inside where they fit; otherwise they overflow at both ends alike
 * @returns centres in the order given
 */
export function spread(wanted: number[], size: number, range: [number, number]): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
  const low = Math.min(range[0] + size / 2, (range[0] + range[1] - (wanted.length - 1) * size) / 2);
  const high = range[0] + range[1] - low;
  const clusters: Cluster[] = [];
  const settle = (cluster: Cluster) => {
    const count = cluster.to - cluster.from + 1;
    const last = high - (count - 1) * size;
    cluster.start = Math.max(low, Math.min(last, cluster.sum / count));
  };
  order.forEach((index, i) => {
    let cluster: Cluster = { from: i, to: i, sum: wanted[index]!, start: 0 };
    settle(cluster);
    for (
      let before = clusters.at(-1);
      before && before.start + (before.to - before.from + 1) * size > cluster.start;
      before = clusters.at(-1)
    ) {
      const offset = (before.to - before.from + 1) * size;
      cluster = {
        from: before.from,
        to: cluster.to,
        sum: before.sum + cluster.sum - (cluster.to - cluster.from + 1) * offset,
        start: 0,
      };
      settle(cluster);
      clusters.pop();
    }
    clusters.push(cluster);
  });
  const centres = new Array<number>(wanted.length);
  for (const cluster of clusters) {
    for (let i = cluster.from; i <= cluster.to; i++) centres[order[i]!] = cluster.start + (i - cluster.from) * size;
  }
  return centres;
}

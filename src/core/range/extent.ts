/** Least and greatest coordinate of points along an axis. */
export function extent(points: readonly (readonly [number, number])[], axis: 0 | 1): [number, number] {
  const values = points.map((point) => point[axis]);
  return [Math.min(...values), Math.max(...values)];
}

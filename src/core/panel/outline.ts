import type { Point } from './panel';

/** Area of a simple polygon, positive counter-clockwise (shoelace), mm². */
export function polygonArea(polygon: readonly Point[]): number {
  let twice = 0;
  polygon.forEach(([u, v], i) => {
    const [nextU, nextV] = polygon[(i + 1) % polygon.length]!;
    twice += u * nextV - nextU * v;
  });
  return twice / 2;
}

/** Distance from a point to a polygon's boundary, positive inside, mm. */
export function distanceToOutline(point: Point, polygon: readonly Point[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    nearest = Math.min(nearest, distanceToSegment(point, a, b));
    const crosses = a[1] > point[1] !== b[1] > point[1];
    if (crosses && point[0] < a[0] + ((point[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  });
  return inside ? nearest : -nearest;
}

function distanceToSegment([u, v]: Point, [au, av]: Point, [bu, bv]: Point): number {
  const du = bu - au;
  const dv = bv - av;
  const share = Math.min(1, Math.max(0, ((u - au) * du + (v - av) * dv) / (du * du + dv * dv || 1)));
  return Math.hypot(u - au - share * du, v - av - share * dv);
}

/** Where a polygon crosses a line on which one coordinate (`axis`) is `value`: the other coordinate there, mm. */
export function crossings(polygon: readonly Point[], axis: 0 | 1, value: number): number[] {
  const other = axis === 0 ? 1 : 0;
  return polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a[axis] <= value === b[axis] <= value) return [];
    return [a[other] + ((value - a[axis]) / (b[axis] - a[axis])) * (b[other] - a[other])];
  });
}

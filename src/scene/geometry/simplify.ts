type Point = readonly [number, number];

const offLine = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(dx, dy);
  if (length === 0) return Math.hypot(p[0] - a[0], p[1] - a[1]);
  return Math.abs(dx * (p[1] - a[1]) - dy * (p[0] - a[0])) / length;
};

/** Fewer points of a polyline, none of those left out further than `tolerance` from it (Douglas and Peucker, 1973). */
export function simplified<P extends Point>(line: readonly P[], tolerance: number): P[] {
  const first = line[0];
  const last = line[line.length - 1];
  if (line.length < 3 || !first || !last) return [...line];
  let worst = 0;
  let at = 0;
  line.forEach((point, i) => {
    const distance = offLine(point, first, last);
    if (distance > worst) [worst, at] = [distance, i];
  });
  if (worst <= tolerance) return [first, last];
  return [...simplified(line.slice(0, at + 1), tolerance).slice(0, -1), ...simplified(line.slice(at), tolerance)];
}

/** As `simplified`, for a closed line whose first point is not repeated at the end. */
export function simplifiedRing<P extends Point>(ring: readonly P[], tolerance: number): P[] {
  const first = ring[0];
  if (ring.length < 4 || !first) return [...ring];
  let far = 0;
  ring.forEach((point, i) => {
    const distance = (p: Point) => Math.hypot(p[0] - first[0], p[1] - first[1]);
    if (distance(point) > distance(ring[far]!)) far = i;
  });
  return [
    ...simplified(ring.slice(0, far + 1), tolerance).slice(0, -1),
    ...simplified([...ring.slice(far), first], tolerance).slice(0, -1),
  ];
}

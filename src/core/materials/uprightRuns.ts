import { distanceToOutline, type Panel, type Point } from '../panel';

/** Steps at which an upright line is looked at, mm. */
const STEP = 10;

/** Whether a point behind a panel keeps clear of its edges and holes by `by` mm. */
export function clearOf({ outline, holes }: Pick<Panel, 'outline' | 'holes'>, by: number): (point: Point) => boolean {
  return (point) =>
    distanceToOutline(point, outline) >= by - 1e-9 &&
    holes.every(({ u, v, diameter }) => Math.hypot(point[0] - u, point[1] - v) >= diameter / 2 + by);
}

/** Even steps of the given spacing, as many as fit, centred on the range of the values. */
export function centred(values: readonly number[], spacing: number): number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const count = Math.floor((high - low) / spacing) + 1;
  const first = (low + high - (count - 1) * spacing) / 2;
  return Array.from({ length: count }, (_, k) => first + k * spacing);
}

/** Unbroken upright stretches at u that are clear, from one height to another, bottom to top. */
export function uprightRuns(
  u: number,
  [low, high]: readonly [number, number],
  clear: (point: Point) => boolean,
): [Point, Point][] {
  if (high <= low) return [];
  const count = Math.max(1, Math.round((high - low) / STEP));
  const found: [Point, Point][] = [];
  let start: Point | null = null;
  let last: Point | null = null;
  for (let k = 0; k <= count; k++) {
    const point: Point = [u, low + ((high - low) * k) / count];
    if (clear(point)) {
      start ??= point;
      last = point;
    } else if (start !== null) {
      found.push([start, last!]);
      start = null;
    }
  }
  if (start !== null) found.push([start, last!]);
  return found.filter(([from, to]) => to[1] > from[1]);
}

import type { EdgeName, Gap, Point } from './panel';

/** A sheet that falls short by less than this is no gap, mm. */
const GAP_TOLERANCE = 0.05;

/**
 * Stretches of an edge that the sheet does not reach, from where it starts to fall short to where it ends.
 * @param points of the edge, in order
 * @param widths of the sliver at each point, negative where the sheet falls short, mm
 */
export function gapsAlong(edge: EdgeName, points: readonly Point[], widths: readonly number[]): Gap[] {
  const gaps: Gap[] = [];
  let open: Gap | null = null;
  points.forEach((point, i) => {
    const width = widths[i]!;
    if (width < 0) {
      open ??= { edge, from: i === 0 ? point : crossing(points, widths, i), to: point, max: 0 };
      open.to = point;
      open.max = Math.max(open.max, -width);
    } else if (open !== null) {
      open.to = crossing(points, widths, i);
      gaps.push(open);
      open = null;
    }
  });
  if (open !== null) gaps.push(open);
  return gaps.filter(({ max }) => max > GAP_TOLERANCE);
}

/** The place between point i − 1 and point i at which the width passes through zero. */
function crossing(points: readonly Point[], widths: readonly number[], i: number): Point {
  const [before, after] = [widths[i - 1]!, widths[i]!];
  const share = before / (before - after);
  const [[u0, v0], [u1, v1]] = [points[i - 1]!, points[i]!];
  return [u0 + share * (u1 - u0), v0 + share * (v1 - v0)];
}

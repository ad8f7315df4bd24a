import type { Rim } from '../job-file';
import type { Point } from '../panel';

/** Points closer together than this outwards count as one step in the rim, mm. */
const LEAST_STEP = 0.1;

/**
 * A contour of rim and apron as one line, from a contour gauge or traced on a photo, taken apart into what a job keeps:
 * the rim's profile up to where the line stands out farthest, and the apron below that.
 * @param line points [outward, up] in mm from where the rim leaves its plane, along the line; the first lies on the plane
 */
export function splitContour(line: readonly Point[]): Pick<Rim, 'profile' | 'apron'> {
  const [first] = line;
  if (first === undefined) return { profile: [], apron: [] };
  const points = line.map(([out, up]): Point => [out - first[0], up - first[1]]);
  const farthest = points.reduce((best, [out], i) => (out > points[best]![0] ? i : best), 0);
  const profile: Point[] = [];
  for (const point of points.slice(0, farthest + 1)) {
    const before = profile.at(-1);
    if (before === undefined || point[0] >= before[0] + LEAST_STEP) profile.push(point);
  }
  const edge = points[farthest]!;
  const apron: Point[] = [];
  for (const [out, up] of points.slice(farthest + 1)) {
    if (up < (apron.at(-1)?.[1] ?? edge[1])) apron.push([out - edge[0], up]);
  }
  return { profile, apron };
}

import { LEAST_PROFILE_STEP, type Rim } from '../job-file';
import type { Point } from '../panel';

/**
 * A contour of rim and apron as one line, from a contour gauge or traced on a photo, taken apart into what a job keeps:
 * the rim's profile out to where the line stands out farthest, to within one step of the profile, and the apron below that.
 * @param line points [outward, up] in mm from where the rim leaves its plane, along the line; the first lies on the plane
 */
export function splitContour(line: readonly Point[]): Pick<Rim, 'profile' | 'apron'> {
  const [first] = line;
  if (first === undefined) return { profile: [], apron: [] };
  const points = line.map(([out, up]): Point => [out - first[0], up - first[1]]);
  const farthest = points.reduce((best, [out], i) => (out > points[best]![0] ? i : best), 0);
  let edge = 0;
  const profile = [points[0]!];
  for (let i = 1; i <= farthest; i++) {
    if (points[i]![0] < points[edge]![0] + LEAST_PROFILE_STEP) continue;
    edge = i;
    profile.push(points[i]!);
  }
  const [edgeOut, edgeUp] = points[edge]!;
  const apron: Point[] = [];
  for (const [out, up] of points.slice(edge + 1)) {
    if (up < (apron.at(-1)?.[1] ?? edgeUp)) apron.push([out - edgeOut, up]);
  }
  return { profile, apron };
}

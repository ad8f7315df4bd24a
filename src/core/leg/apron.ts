import type { Alcove } from '../alcove';
import { type Dual, shift } from '../dual';
import type { Job, Side } from '../job-file';
import { overRim } from '../panel';

/** A point of the apron's face beside a side wall: distance from the back wall and height, mm. */
export interface ApronPoint {
  z: number;
  y: Dual;
}

/** The apron's face in front of a board `faces` mm off the wall, from the rim's edge down to the floor. */
export function apronLine(alcove: Alcove, job: Job, side: Side, faces: readonly number[]): ApronPoint[] {
  const { rim } = job;
  const edge = overRim(alcove, rim, side, faces, 0)(rim.width);
  const edgeRise = rim.profile.at(-1)?.[1] ?? 0;
  const floor = -job.levelAboveFloor;
  const points: ApronPoint[] = [{ z: rim.width, y: edge }];
  for (const [outward, rise] of rim.apron) {
    const above = points.at(-1)!;
    const point = { z: rim.width + outward, y: shift(edge, rise - edgeRise) };
    if (point.y.value >= above.y.value) continue;
    if (point.y.value <= floor) {
      const share = (above.y.value - floor) / (above.y.value - point.y.value);
      points.push({ z: above.z + share * (point.z - above.z), y: { value: floor, gradient: null } });
      return points;
    }
    points.push(point);
  }
  const last = points.at(-1)!;
  if (last.y.value > floor) points.push({ z: last.z, y: { value: floor, gradient: null } });
  return points;
}

/** How far the apron's face stands out at a height, mm from the back wall; above the rim's edge as at the edge. */
export function apronAt(points: readonly ApronPoint[], height: number): number {
  const below = points.findIndex(({ y }) => y.value <= height);
  if (below === 0) return points[0]!.z;
  if (below < 0) return points.at(-1)!.z;
  const [a, b] = [points[below - 1]!, points[below]!];
  const share = (a.y.value - height) / (a.y.value - b.y.value);
  return a.z + share * (b.z - a.z);
}

/** Farthest that the apron stands out from the rim's edge to the floor, mm from the back wall. */
export const farthestOut = (points: readonly ApronPoint[]): number => Math.max(...points.map(({ z }) => z));

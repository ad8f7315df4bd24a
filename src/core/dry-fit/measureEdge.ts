import type { Point } from '../panel';
import type { Fold, Vec3 } from '../piece';
import type { EdgeFit } from './report';
import type { EdgeRule, Segment } from './rule';

/** An edge as it stands on the flat template: at the face, and at the back where it differs. */
export interface FlatEdge {
  face: readonly Point[];
  back: readonly Point[] | null;
}

/**
 * Folds an edge up and measures it at the corners and the middle of every straight.
 * @param thickness of the piece, mm
 */
export function measureEdge(
  name: string,
  { face, back }: FlatEdge,
  place: Fold,
  thickness: number,
  rule: EdgeRule,
): EdgeFit {
  const fit: EdgeFit = { edge: name, overlap: 0, gap: 0, at: place(face[0]![0], face[0]![1], 0) };
  const note = (by: number, at: Vec3): void => {
    if (Math.abs(by) > Math.max(fit.overlap, fit.gap)) fit.at = at;
    if (by < 0) fit.overlap = Math.max(fit.overlap, -by);
    else fit.gap = Math.max(fit.gap, by);
  };
  const along = (path: readonly Point[], depths: readonly number[]): void => {
    for (const [from, to] of straightsOf(path, rule.endsOnly ?? false)) {
      const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      const segment: Segment = {
        middle: place(...middle, 0),
        level: Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]),
      };
      for (const [x, y] of rule.endsOnly ? [from, to] : [from, middle, to]) {
        const clear = depths.map((w) => rule.clear(place(x, y, w), w, segment));
        note(Math.min(...clear), place(x, y, 0));
      }
    }
  };
  if (back === null) along(face, rule.depths);
  else {
    if (rule.depths.includes(thickness)) along(face, [thickness]);
    if (rule.depths.includes(0)) along(back, [0]);
  }
  return fit;
}

type Straight = readonly [Point, Point];

function straightsOf(path: readonly Point[], longestOnly: boolean): Straight[] {
  const all = path.slice(1).map((to, i): Straight => [path[i]!, to]);
  if (all.length === 0) return [[path[0]!, path[0]!]];
  const long = ([[ax, ay], [bx, by]]: Straight): number => Math.hypot(bx - ax, by - ay);
  return longestOnly ? [all.reduce((best, each) => (long(each) > long(best) ? each : best))] : all;
}

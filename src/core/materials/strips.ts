import type { Supplies } from '../job-file';
import type { Panel, Point } from '../panel';
import { extent, spaced } from '../range';
import { clearOf, uprightRuns } from './uprightRuns';

/**
 * Upright double-faced strips behind a panel, bottom to top: one near each side, and between them no farther apart than
 * the spacing, all clear of edges and holes.
 */
export function layStrips(
  panel: Pick<Panel, 'outline' | 'holes'>,
  { spacing, edgeClear }: Supplies['strips'],
): [Point, Point][] {
  const inside = ([least, most]: [number, number]): [number, number] => [least + edgeClear, most - edgeClear];
  const [left, right] = inside(extent(panel.outline, 0));
  const range = inside(extent(panel.outline, 1));
  if (right < left || range[1] < range[0]) return [];
  const steps = right - left < 1 ? 0 : Math.max(1, Math.ceil((right - left) / spacing - 1e-9));
  // A slanting edge takes up to a strip's clearance: the outermost strips follow its nearest point, not its farthest.
  const clear = clearOf(panel, 0.5 * edgeClear);
  return spaced(left, right, steps + 1).flatMap((u) => uprightRuns(u, range, clear));
}

/** Total length of strips, mm. */
export const stripLength = (strips: readonly [Point, Point][]): number =>
  strips.reduce((all, [[, from], [, to]]) => all + to - from, 0);

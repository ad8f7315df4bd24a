import type { EdgeName, Panel } from '../panel';
import type { Cover, PieceNote } from '../piece';
import type { OuterLine } from './outerLine';
import type { TrimSite } from './site';

/** Trim that lies on the panel by less than this holds badly, mm: 1/4 in (common practice, no source). */
const LEAST_LAP = 6.35;

/** What a piece along a panel's top hides: the panel's top is level, so only gaps of the sheet make its edge wander. */
export function topCover({ job, lowerEdge }: TrimSite, panel: Panel): Cover {
  return coverOf(widestGap(panel, 'top'), job.fit.top - lowerEdge);
}

/** What a vertical hides: the panel's front edge wanders between plumb lines, by `taper`. */
export function verticalCover({ verticalWidth }: TrimSite, panel: Panel, { at, edges }: OuterLine): Cover {
  const [low, high] = edges.map(({ value }) => value) as [number, number];
  const cover = coverOf(
    Math.abs(high - low) + widestGap(panel, 'front'),
    Math.max(low, high) - (at.value - verticalWidth),
  );
  const proud = Math.max(low, high) - at.value;
  return { ...cover, shows: Math.max(cover.shows, proud) };
}

/** @param lap how far the trim lies on the panel where its edge stands out most */
function coverOf(taper: number, lap: number): Cover {
  const least = lap - taper;
  return { taper, lap: Math.max(0, least), shows: Math.max(0, -least) };
}

const widestGap = ({ gaps }: Panel, edge: EdgeName): number =>
  gaps.reduce((widest, gap) => (gap.edge === edge ? Math.max(widest, gap.max) : widest), 0);

export function coverNotes({ lap, shows }: Cover): PieceNote[] {
  if (shows > 0) return [{ text: "too narrow: part of the panel's edge stays in sight", howMuch: shows }];
  if (lap < LEAST_LAP) return [{ text: 'lies on the panel by little; use a wider strip', howMuch: lap }];
  return [];
}

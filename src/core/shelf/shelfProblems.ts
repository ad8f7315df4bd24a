import type { Job, WallName } from '../job-file';
import { LEAST_WEB, type Panel, type Problem } from '../panel';
import { fold } from '../piece';
import { extent } from '../range';
import type { ShelfPiece } from './shelf';

/** Least room between a shelf's underside and the rim, and between shelves, mm (common practice, no source). */
const LEAST_ROOM = 50;

/** Shelves off the panels, in the way of each other, of trim or of a fixture, or touching a wall. */
export function shelfProblems(job: Job, shelves: readonly ShelfPiece[], panels: Record<WallName, Panel>): Problem[] {
  return shelves.flatMap((shelf, i) => [
    ...placeProblems(job, shelf, panels),
    ...touchProblems(shelf),
    ...holeConflicts(shelf, panels),
    ...shelves.slice(i + 1).flatMap((other) => overlaps(shelf, other)),
  ]);
}

const problem = (shelf: ShelfPiece, what: string, howMuch: number | null): Problem => ({
  where: `pieces.${shelf.id}`,
  what,
  howMuch,
});

function placeProblems({ fit, trim }: Job, shelf: ShelfPiece, panels: Record<WallName, Panel>): Problem[] {
  const problems: Problem[] = [];
  const trimmed = trim.top || trim.sideTops;
  const limit = trimmed ? Math.min(fit.top, fit.top + trim.rise - trim.width) : fit.top;
  if (shelf.height > limit) {
    const what = trimmed
      ? 'the shelf stands higher than the lower edge of the trim'
      : 'the shelf stands higher than the panels';
    problems.push(problem(shelf, what, shelf.height - limit));
  }
  const place = fold(shelf);
  for (const wall of ['back', shelf.corner] as const) {
    const line = shelf.bracketLines.find((each) => each.wall === wall)!;
    const [least, most] = extent(panels[wall].outline, 0);
    const past = Math.max(line.to[0] - most, least - line.to[0]);
    if (past > 0) problems.push(problem(shelf, `the shelf reaches past the ${wall} panel`, past));
  }
  const bottom = Math.min(...shelf.outline.map(([x, y]) => place(x, y, 0)[1]));
  const rim = Math.max(...[panels.back, panels[shelf.corner]].map(({ outline }) => extent(outline, 1)[0]));
  const room = bottom - rim;
  if (room < LEAST_ROOM)
    problems.push(problem(shelf, 'too little room is left between the shelf and the rim', Math.max(0, room)));
  return problems;
}

function touchProblems(shelf: ShelfPiece): Problem[] {
  return shelf.gaps
    .filter(({ min }) => min < 0)
    .map(({ wall, min }) =>
      problem(shelf, `the straight edge would run into the bowed ${wall} panel; allow a wider gap`, -min),
    );
}

/** A fixture's hole behind or close to the edge of a shelf. */
function holeConflicts(shelf: ShelfPiece, panels: Record<WallName, Panel>): Problem[] {
  return shelf.bracketLines.flatMap(({ wall, from, to }) =>
    panels[wall].holes.flatMap((hole) => {
      const share = Math.min(1, Math.max(0, (hole.u - from[0]) / (to[0] - from[0])));
      const underside = from[1] + share * (to[1] - from[1]);
      const [u, v] = [
        from[0] + share * (to[0] - from[0]),
        Math.min(underside + shelf.thickness, Math.max(underside, hole.v)),
      ];
      const web = Math.hypot(hole.u - u, hole.v - v) - hole.diameter / 2;
      return web < LEAST_WEB ? [problem(shelf, `the shelf is in the way of hole ${hole.id}`, LEAST_WEB - web)] : [];
    }),
  );
}

/** Two in one corner too close one over the other, or two from both corners that meet along the back panel. */
function overlaps(shelf: ShelfPiece, other: ShelfPiece): Problem[] {
  const [low, high] = shelf.height < other.height ? [shelf, other] : [other, shelf];
  const room = high.height - high.thickness - low.height;
  if (shelf.corner === other.corner) {
    return room < LEAST_ROOM ? [problem(high, `too little room over ${low.name}`, Math.max(0, room))] : [];
  }
  const [left, right] = shelf.corner === 'left' ? [shelf, other] : [other, shelf];
  const shared = backEnd(left) - backEnd(right);
  return room < 0 && shared > 0 ? [problem(high, `the shelf runs into ${low.name} along the back panel`, shared)] : [];
}

/** Where a shelf ends along the back panel, mm from the plumb line. */
const backEnd = ({ bracketLines }: ShelfPiece): number => bracketLines.find(({ wall }) => wall === 'back')!.to[0];

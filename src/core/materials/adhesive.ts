import type { Supplies } from '../job-file';
import { distanceToOutline, type Panel, type Point } from '../panel';

/** Where adhesive goes behind a panel, wall coordinates, and how much. */
export interface AdhesiveLayout {
  /** centres of dots; empty for beads */
  dots: Point[];
  /** upright beads, bottom to top; empty for dots */
  beads: [Point, Point][];
  /** pressed flat, before waste, mm³ */
  volume: number;
}

const BEAD_STEP = 10;

/** Lays dots on a square grid, or upright beads, over a panel: clear of its edges and holes, centred on it. */
export function layAdhesive(
  panel: Panel,
  settings: Supplies['adhesive'],
  bed: (u: number, v: number) => number,
): AdhesiveLayout {
  const { layout, spacing, edgeClear, pressedWidth } = settings;
  const clear = (point: Point): boolean =>
    distanceToOutline(point, panel.outline) >= edgeClear &&
    panel.holes.every(({ u, v, diameter }) => Math.hypot(point[0] - u, point[1] - v) >= diameter / 2 + edgeClear);
  const us = centred(
    panel.outline.map(([u]) => u),
    spacing,
  );
  if (layout === 'dots') {
    const vs = centred(
      panel.outline.map(([, v]) => v),
      spacing,
    );
    const dots = us.flatMap((u) => vs.map((v): Point => [u, v])).filter(clear);
    const area = (Math.PI / 4) * pressedWidth ** 2;
    return { dots, beads: [], volume: dots.reduce((sum, [u, v]) => sum + area * bed(u, v), 0) };
  }
  const vs = centred(
    panel.outline.map(([, v]) => v),
    BEAD_STEP,
  );
  const beads = us.flatMap((u) =>
    runs(
      vs.map((v): Point => [u, v]),
      clear,
    ),
  );
  const volume = beads.reduce(
    (sum, [[u, from], [, to]]) => sum + pressedWidth * (to - from) * bed(u, (from + to) / 2),
    0,
  );
  return { dots: [], beads, volume };
}

/** Even steps of the given spacing, as many as fit, centred on the range of the values. */
function centred(values: number[], spacing: number): number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const count = Math.floor((high - low) / spacing) + 1;
  const first = (low + high - (count - 1) * spacing) / 2;
  return Array.from({ length: count }, (_, k) => first + k * spacing);
}

/** Unbroken stretches of clear points. */
function runs(points: Point[], clear: (point: Point) => boolean): [Point, Point][] {
  const found: [Point, Point][] = [];
  let start: Point | null = null;
  let last: Point | null = null;
  for (const point of points) {
    if (clear(point)) {
      start ??= point;
      last = point;
    } else if (start !== null) {
      found.push([start, last!]);
      start = null;
    }
  }
  if (start !== null) found.push([start, last!]);
  return found;
}

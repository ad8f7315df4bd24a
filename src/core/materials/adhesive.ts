import type { Supplies } from '../job-file';
import type { Panel, Point } from '../panel';
import { layStrips } from './strips';
import { centred, clearOf, uprightRuns } from './uprightRuns';

/** What goes behind a panel, wall coordinates, and how much. */
export interface AdhesiveLayout {
  /** centres of dots; empty for beads */
  dots: Point[];
  /** upright beads, bottom to top; empty for dots */
  beads: [Point, Point][];
  /** upright double-faced strips, bottom to top */
  strips: [Point, Point][];
  /** least and largest thickness of the bed at the dots or along the beads, mm; null where there are none */
  bed: { min: number; max: number } | null;
  /** pressed flat, before waste, mm³ */
  volume: number;
}

/** Parts that a bead is split into, for the bed along it, mm. */
const BEAD_STEP = 50;

/**
 * Lays double-faced strips, and dots on a square grid or upright beads, over a panel: clear of its edges and holes,
 * centred on it, dots and beads clear of the strips.
 * @param bed thickness of the bed at wall coordinates, mm
 */
export function layAdhesive(
  panel: Panel,
  settings: Supplies['adhesive'],
  stripSettings: Supplies['strips'],
  bed: (u: number, v: number) => number,
): AdhesiveLayout {
  const { layout, spacing, edgeClear, pressedWidth } = settings;
  const strips = layStrips(panel, stripSettings);
  const offEdges = clearOf(panel, edgeClear);
  const offStrips = (pressedWidth + stripSettings.width) / 2;
  const clear = (point: Point): boolean =>
    offEdges(point) &&
    strips.every(
      ([[u, from], [, to]]) =>
        Math.abs(point[0] - u) >= offStrips || point[1] < from - pressedWidth / 2 || point[1] > to + pressedWidth / 2,
    );
  const us = centred(
    panel.outline.map(([u]) => u),
    spacing,
  );
  const heights = panel.outline.map(([, v]) => v);
  if (layout === 'dots') {
    const vs = centred(heights, spacing);
    const dots = us.flatMap((u) => vs.map((v): Point => [u, v])).filter(clear);
    const area = (Math.PI / 4) * pressedWidth ** 2;
    const beds = dots.map(([u, v]) => bed(u, v));
    return { dots, beads: [], strips, bed: rangeOf(beds), volume: area * sum(beds) };
  }
  const range: [number, number] = [Math.min(...heights), Math.max(...heights)];
  const beads = us.flatMap((u) => uprightRuns(u, range, clear));
  const beds: number[] = [];
  let volume = 0;
  for (const [[u, from], [, to]] of beads) {
    const count = Math.max(1, Math.ceil((to - from) / BEAD_STEP));
    const along = Array.from({ length: count }, (_, k) => bed(u, from + ((k + 0.5) / count) * (to - from)));
    beds.push(...along);
    volume += (pressedWidth * (to - from) * sum(along)) / count;
  }
  return { dots: [], beads, strips, bed: rangeOf(beds), volume };
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
const rangeOf = (values: readonly number[]) =>
  values.length === 0 ? null : { min: Math.min(...values), max: Math.max(...values) };

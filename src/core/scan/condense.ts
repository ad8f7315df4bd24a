import type { Scan, ScanGrid } from '../job-file';
import { SURFACE_NAMES, type SurfaceName } from './axes';
import { type CellCounts, cellCounts, pooled } from './cellCounts';
import { type PointCloud, pointCount } from './cloud';
import { offEdges } from './edges';
import { type Field, fieldAt, median } from './field';
import { frontEdges } from './frontEdges';
import { BINS, binOf, crowdedMean, type RobustMean, robustMean } from './histogram';
import { labelledFields, labelTotals, someOfEach } from './labelled';
import { RUN } from './labelPoints';
import { LABEL } from './labels';
import type { RigidFrame, Rows } from './rigidFrame';
import type { RobustField } from './robustField';
import { withoutStrays } from './strays';

/** What the adjustment takes from a scan: the part of a `scan` reading that comes from its points. */
export type ScanCells = Pick<Scan, 'points' | 'surfaces' | 'front'>;

export interface CondenseOptions {
  /** side of a cell, mm */
  cell?: number;
  onProgress?(share: number): void;
  cancelled?(): boolean;
}

/** A cell with fewer points says nothing; on a ledge, which has few cells, a few say something. */
const LEAST_POINTS = 5;
const LEAST_ON_RIM = 3;
/** Points on the rim from which its cells are half as wide. */
const FOR_SMALL_CELLS = 1000;
/** Nearer to a neighbouring surface than this a point may belong to it, mm. */
const CLEAR = 14;
/** Nothing of an alcove lies farther from its origin, mm. */
const FARTHEST = 3000;
/** A cell whose points spread so much wider than its wall's usual cell shows something on the wall, not the wall. */
const WIDE = { times: 1.8, more: 0.6 };
/** The spread of fewer points than this says less than that of the usual cell. */
const FEW = 40;
/** What the points of a cell that may lie at an edge, its face below among them, are off by, mm (one standard deviation). */
const AT_EDGE = 1;
/** A mean of a cell is never better known than this, mm: the last digit kept, and what its points share. */
const LEAST_SD = 0.05;

/**
 * The cells of each surface: in each a robust mean of its points' heights, at its middle (a quadratic shape of the whole
 * surface is taken off first, so that it does not matter where in the cell the points lie), with the standard deviation
 * that their spread gives it. Points near another surface are left out. Null where it was cancelled.
 */
export function condenseScan(
  cloud: PointCloud,
  labels: Uint8Array,
  frame: RigidFrame,
  { cell = 50, onProgress, cancelled }: CondenseOptions = {},
): ScanCells | null {
  const totals = labelTotals(labels);
  const some = someOfEach(cloud, labels, frame, totals);
  const fields = labelledFields(some);
  onProgress?.(0.3);
  const count = pointCount(cloud);
  const grids = gridsOf(fields, cell);
  for (let from = 0; from < count; from += RUN) {
    if (cancelled?.() === true) return null;
    countPoints(cloud, labels, frame, fields, grids, from, Math.min(count, from + RUN));
    onProgress?.(0.3 + 0.7 * Math.min(1, (from + RUN) / count));
  }
  const surfaces: ScanCells['surfaces'] = {};
  let points = 0;
  for (const name of SURFACE_NAMES) {
    const [field, grid] = [fields[name], grids[name]];
    if (field === undefined || grid === undefined) continue;
    const condensed =
      name === 'rim'
        ? condensedGrid(ledge(grid, totals[LABEL.rim]!, fields), field.field, LEAST_ON_RIM)
        : condensedGrid({ grid }, field.field, LEAST_POINTS);
    if (condensed === null) continue;
    surfaces[name] = condensed.grid;
    points += condensed.points;
  }
  return { points, surfaces, front: frontEdges(some.front, fields) };
}

type Fields = Partial<Record<SurfaceName, RobustField>>;
type Grids = Partial<Record<SurfaceName, CellCounts>>;

function gridsOf(fields: Fields, cell: number): Grids {
  const full: [number, number] = [-FARTHEST, FARTHEST];
  const grids: Grids = {};
  const x: [number, number] = [
    fields.left ? fieldAt(fields.left.field, 0, 0) - 100 : -FARTHEST / 2,
    fields.right ? fieldAt(fields.right.field, 0, 0) + 100 : FARTHEST / 2,
  ];
  const z: [number, number] = [0, 1500];
  if (fields.back) grids.back = cellCounts(x, full, cell);
  if (fields.left) grids.left = cellCounts(z, full, cell);
  if (fields.right) grids.right = cellCounts(z, full, cell);
  // Ledges are narrow: where they end is told by smaller cells.
  if (fields.rim) grids.rim = cellCounts(x, z, cell / 2);
  return grids;
}

/** A stretch of points counted into the cells of their surfaces. */
function countPoints(
  { positions }: PointCloud,
  labels: Uint8Array,
  { rotation, translation: [tx, ty, tz] }: RigidFrame,
  fields: Fields,
  grids: Grids,
  from: number,
  to: number,
): void {
  const [r0, r1, r2, r3, r4, r5, r6, r7, r8] = rotation as unknown as Rows;
  // What was not found is taken to lie so far away that nothing is near it.
  const b = fields.back?.field ?? Float64Array.of(-FAR, 0, 0, 0, 0, 0);
  const l = fields.left?.field ?? Float64Array.of(-FAR, 0, 0, 0, 0, 0);
  const r = fields.right?.field ?? Float64Array.of(FAR, 0, 0, 0, 0, 0);
  const m = fields.rim?.field ?? Float64Array.of(-FAR, 0, 0, 0, 0, 0);
  const { back, left, right, rim } = grids;
  for (let i = from; i < to; i++) {
    const label = labels[i]!;
    if (label < LABEL.rim || label > LABEL.right) continue;
    const px = positions[3 * i]!;
    const py = positions[3 * i + 1]!;
    const pz = positions[3 * i + 2]!;
    const x = r0 * px + r1 * py + r2 * pz + tx;
    const y = r3 * px + r4 * py + r5 * pz + ty;
    const z = r6 * px + r7 * py + r8 * pz + tz;
    const offBack = z - fieldAt(b, x, y);
    const offLeft = x - fieldAt(l, z, y);
    const offRight = x - fieldAt(r, z, y);
    const offRim = y - fieldAt(m, x, z);
    const near =
      (offBack < CLEAR ? 1 : 0) + (offLeft < CLEAR ? 1 : 0) + (offRight > -CLEAR ? 1 : 0) + (offRim < CLEAR ? 1 : 0);
    if (label === LABEL.back) {
      if (near === (offBack < CLEAR ? 1 : 0)) countIn(back, x, y, offBack);
    } else if (label === LABEL.left) {
      if (near === (offLeft < CLEAR ? 1 : 0)) countIn(left, z, y, offLeft);
    } else if (label === LABEL.right) {
      if (near === (offRight > -CLEAR ? 1 : 0)) countIn(right, z, y, offRight);
    } else if (near === (offRim < CLEAR ? 1 : 0)) countIn(rim, x, z, offRim);
  }
}

/** m */
const FAR = 1e6;

function countIn(grid: CellCounts | undefined, a: number, b: number, off: number): void {
  if (grid === undefined) return;
  const column = Math.floor((a - grid.from[0]) / grid.size);
  const row = Math.floor((b - grid.from[1]) / grid.size);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return;
  const bin = binOf(off);
  if (bin < 0) return;
  const k = (row * grid.columns + column) * BINS + bin;
  grid.counts[k]! += 1;
  grid.sums[k]! += off;
}

/** Whether a place on the rim lies at a wall or behind it. */
function besideWall({ back, left, right, rim }: Fields, x: number, z: number): boolean {
  const y = rim === undefined ? 0 : fieldAt(rim.field, x, z);
  return (
    (back !== undefined && z - fieldAt(back.field, x, y) < CLEAR) ||
    (left !== undefined && x - fieldAt(left.field, z, y) < CLEAR) ||
    (right !== undefined && fieldAt(right.field, z, y) - x < CLEAR)
  );
}

/** Counts of a surface's cells, and which of them may lie at an edge. */
interface Cells {
  grid: CellCounts;
  atEdge?: readonly boolean[];
}

/**
 * The cells of the rim, pooled to the usual size where few points lie on it. What lies off every edge is taken where there
 * is enough of it, all points of a cell elsewhere.
 */
function ledge(fine: CellCounts, onRim: number, fields: Fields): Cells {
  const times = onRim > FOR_SMALL_CELLS ? 1 : 2;
  const means = meansOf(fine);
  const grid = pooled(fine, times, (k) => means[k] !== null);
  const usual = usualSpread(times === 1 ? means : meansOf(grid), LEAST_ON_RIM) ?? 0;
  const kept = offEdges(means, usual, fine, (x, z) => besideWall(fields, x, z));
  const sure = pooled(fine, times, (k) => kept[k]!);
  const atEdge = meansOf(sure).map((mean) => mean === null || mean.count < LEAST_ON_RIM);
  atEdge.forEach((is, k) => {
    if (is) return;
    const [from, to] = [k * BINS, (k + 1) * BINS];
    grid.counts.set(sure.counts.subarray(from, to), from);
    grid.sums.set(sure.sums.subarray(from, to), from);
  });
  return { grid, atEdge };
}

const meansOf = ({ counts, sums, columns, rows }: CellCounts): (RobustMean | null)[] =>
  Array.from({ length: columns * rows }, (_, k) => robustMean(counts, sums, k * BINS));

/**
 * Spread of a point in the usual cell that has enough of them, mm. Robust spreads of few points come out small: the median
 * of that of n normal points is 1 / (1 + 1.5 / (n - 1)) of theirs within 3 % from n = 5 on (found by drawing).
 */
function usualSpread(means: readonly (RobustMean | null)[], least: number): number | null {
  const spreads = means.flatMap((mean) =>
    mean === null || mean.count < least ? [] : [mean.spread * (1 + 1.5 / (mean.count - 1))],
  );
  return spreads.length === 0 ? null : median(spreads);
}

/** Means of all cells that have one, on the smallest grid that holds them. */
function condensedGrid(
  { grid, atEdge }: Cells,
  field: Field,
  least: number,
): { grid: ScanGrid; points: number } | null {
  const { counts, sums } = grid;
  const means = meansOf(grid);
  const usual = usualSpread(means, least);
  if (usual === null) return null;
  const even = means.map((mean, k) => {
    if (mean === null || mean.count < least || mean.spread > WIDE.times * usual + WIDE.more) return null;
    const crowded = crowdedMean(counts, sums, k * BINS, usual, mean);
    return crowded !== null && crowded.count >= least ? crowded : null;
  });
  const sdOf = ({ spread, count }: RobustMean): number =>
    Math.hypot(LEAST_SD, Math.max(spread, count < FEW ? usual : usual / 2) / Math.sqrt(count));
  const kept = withoutStrays(even, grid.columns, sdOf);
  const rows = kept.flatMap((mean, k) => (mean === null ? [] : [Math.floor(k / grid.columns)]));
  const columns = kept.flatMap((mean, k) => (mean === null ? [] : [k % grid.columns]));
  if (rows.length === 0) return null;
  const [row0, row1] = [Math.min(...rows), Math.max(...rows)];
  const [column0, column1] = [Math.min(...columns), Math.max(...columns)];
  const from: [number, number] = [grid.from[0] + (column0 + 0.5) * grid.size, grid.from[1] + (row0 + 0.5) * grid.size];
  const value: (number | null)[] = [];
  const sd: (number | null)[] = [];
  let points = 0;
  for (let row = row0; row <= row1; row++) {
    for (let column = column0; column <= column1; column++) {
      const mean = kept[row * grid.columns + column]!;
      if (mean === null) {
        value.push(null);
        sd.push(null);
        continue;
      }
      points += mean.count;
      const [a, b] = [from[0] + (column - column0) * grid.size, from[1] + (row - row0) * grid.size];
      value.push(Number((fieldAt(field, a, b) + mean.mean).toFixed(2)));
      const edge = atEdge?.[row * grid.columns + column] === true ? AT_EDGE : 0;
      sd.push(Number(Math.hypot(sdOf(mean), edge).toFixed(3)));
    }
  }
  const noise = Number(Math.max(LEAST_SD, usual).toFixed(3));
  return { grid: { from, size: grid.size, columns: column1 - column0 + 1, value, sd, points, noise }, points };
}

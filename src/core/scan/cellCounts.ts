import { BINS } from './histogram';

/** An even grid of cells over a stretch of a surface, with the heights off its shape counted in each. */
export interface CellCounts {
  from: [number, number];
  size: number;
  columns: number;
  rows: number;
  counts: Uint32Array;
  sums: Float64Array;
}

/** A grid over [a0, a1] × [b0, b1], cells' edges at multiples of their size. */
export function cellCounts([a0, a1]: [number, number], [b0, b1]: [number, number], size: number): CellCounts {
  const first = (low: number): number => Math.floor(low / size);
  const columns = Math.max(1, Math.ceil(a1 / size) - first(a0));
  const rows = Math.max(1, Math.ceil(b1 / size) - first(b0));
  return {
    from: [first(a0) * size, first(b0) * size],
    size,
    columns,
    rows,
    counts: new Uint32Array(columns * rows * BINS),
    sums: new Float64Array(columns * rows * BINS),
  };
}

/** The same counts in cells `times` as wide and high, of those cells alone that are kept. */
export function pooled(fine: CellCounts, times: number, isKept: (k: number) => boolean): CellCounts {
  const [columns, rows] = [Math.ceil(fine.columns / times), Math.ceil(fine.rows / times)];
  const coarse: CellCounts = {
    from: fine.from,
    size: times * fine.size,
    columns,
    rows,
    counts: new Uint32Array(columns * rows * BINS),
    sums: new Float64Array(columns * rows * BINS),
  };
  for (let k = 0; k < fine.columns * fine.rows; k++) {
    if (!isKept(k)) continue;
    const [row, column] = [Math.floor(k / fine.columns / times), Math.floor((k % fine.columns) / times)];
    const to = (row * columns + column) * BINS;
    for (let bin = 0; bin < BINS; bin++) {
      coarse.counts[to + bin]! += fine.counts[k * BINS + bin]!;
      coarse.sums[to + bin]! += fine.sums[k * BINS + bin]!;
    }
  }
  return coarse;
}

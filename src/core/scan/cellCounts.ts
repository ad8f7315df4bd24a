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

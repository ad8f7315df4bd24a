/**
 * A grid of equal cells over a rectangle, and the quadratic B-splines on it: one for every cell and one more beyond
 * each edge, (columns + 2) × (rows + 2) in all, number `i + j·across` centred on cell (i − 1, j − 1). They are C¹, so
 * that bending energy is exact for what they span, sum to one everywhere, and are never negative: coefficients above an
 * obstacle's coefficients put the surface above the obstacle everywhere.
 */
export interface SplineGrid {
  columns: number;
  rows: number;
  /** lower left corner and size of a cell, mm */
  u0: number;
  v0: number;
  cellWidth: number;
  cellHeight: number;
  /** numbers of splines along u and v */
  across: number;
  up: number;
}

/** @param region the rectangle, mm */
export function splineGrid(
  region: { u: readonly [number, number]; v: readonly [number, number] },
  columns: number,
  rows: number,
): SplineGrid {
  return {
    columns,
    rows,
    u0: region.u[0],
    v0: region.v[0],
    cellWidth: (region.u[1] - region.u[0]) / columns,
    cellHeight: (region.v[1] - region.v[0]) / rows,
    across: columns + 2,
    up: rows + 2,
  };
}

/** The same rectangle in cells twice as large, or null where the cells are odd in number or too few. */
export function coarserGrid(grid: SplineGrid): SplineGrid | null {
  const { columns, rows, u0, v0, cellWidth, cellHeight } = grid;
  if (columns % 2 !== 0 || rows % 2 !== 0 || columns < 4 || rows < 4) return null;
  const region = { u: [u0, u0 + columns * cellWidth], v: [v0, v0 + rows * cellHeight] } as const;
  return splineGrid(region, columns / 2, rows / 2);
}

/** The grid and all coarser ones, finest first. */
export function stackOf(grid: SplineGrid): SplineGrid[] {
  const coarser = coarserGrid(grid);
  return coarser ? [grid, ...stackOf(coarser)] : [grid];
}

/** Middle of spline (i, j), mm. */
export const centreOf = (grid: SplineGrid, i: number, j: number): [number, number] => [
  grid.u0 + (i - 0.5) * grid.cellWidth,
  grid.v0 + (j - 0.5) * grid.cellHeight,
];

/** Coefficients of the surface that takes a function's values to second order (exactly where it is quadratic). */
export function coefficientsOf(grid: SplineGrid, height: (u: number, v: number) => number): Float64Array {
  const { across, up } = grid;
  const wide = across + 2;
  const samples = new Float64Array(wide * (up + 2));
  for (let j = 0; j < up + 2; j++) {
    for (let i = 0; i < wide; i++) samples[i + j * wide] = height(...centreOf(grid, i - 1, j - 1));
  }
  const coefficients = new Float64Array(across * up);
  const at = (k: number): number => samples[k] as number;
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + 1 + (j + 1) * wide;
      coefficients[i + j * across] = at(k) - (at(k - 1) + at(k + 1) + at(k - wide) + at(k + wide) - 4 * at(k)) / 8;
    }
  }
  return coefficients;
}
